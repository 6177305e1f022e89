package kerfwright.app.storage;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import kerfwright.app.input.BadInput;
import kerfwright.quantity.Message;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** An open database at the newest schema; SQLite and PostgreSQL carry the same one. */
public final class Database implements AutoCloseable {
  /** Environment variable with a JDBC URL: the practice is kept in that PostgreSQL database. */
  public static final String VARIABLE = "KERFWRIGHT_DATABASE";

  /** The database in a practice's folder. */
  public static final String FILE = "kerfwright.db";

  private static final String SQLITE_SETTINGS =
      "?journal_mode=WAL&synchronous=FULL&busy_timeout=30000&foreign_keys=true";
  private static final String WRITING = "&transaction_mode=IMMEDIATE";
  private static final String NEWEST = "latest";
  private static final String POSTGRES = "jdbc:postgresql:";
  private static final String SERVER = "PostgreSQL";

  private final HikariDataSource connections;
  private final Jdbi jdbi;
  private final Sql sql;
  private final Lock turn = new ReentrantLock(true);

  private Database(HikariDataSource connections) {
    this.connections = connections;
    this.jdbi = Jdbi.create(connections);
    this.sql = new Sql(jdbi);
  }

  /** Opens a SQLite file; makes it where there is none. */
  public static Database file(Path file) throws BadInput {
    return file(file, NEWEST);
  }

  /** A SQLite file that is thrown away at the end: nothing waits for the disk. */
  public static Database temporary(Path file) throws BadInput {
    String settings = SQLITE_SETTINGS.replace("synchronous=FULL", "synchronous=OFF");
    return open(
        "jdbc:sqlite:" + file.toAbsolutePath() + settings + WRITING, file.toString(), NEWEST);
  }

  /** A file at an older schema, to be filled with what was kept at that one. */
  public static Database file(Path file, String schema) throws BadInput {
    String url = "jdbc:sqlite:" + file.toAbsolutePath() + SQLITE_SETTINGS + WRITING;
    return open(url, file.toString(), schema);
  }

  /** Opens a PostgreSQL database by its JDBC URL. */
  public static Database server(String jdbcUrl) throws BadInput {
    return server(jdbcUrl, NEWEST);
  }

  /** The same at an older schema where it is new; one that is there already stays as it is. */
  public static Database server(String jdbcUrl, String schema) throws BadInput {
    return open(sound(jdbcUrl), SERVER, schema);
  }

  private static String sound(String jdbcUrl) throws BadInput {
    if (!jdbcUrl.startsWith(POSTGRES)) {
      throw new BadInput("database", Message.of("fault.no-server-url", POSTGRES));
    }
    // the URL may hold a password: it is not shown
    return jdbcUrl;
  }

  private static Database open(String url, String shown, String schema) throws BadInput {
    HikariDataSource connections = connect(url, shown, false);
    try {
      Flyway.configure()
          .dataSource(connections)
          .locations("classpath:kerfwright/app/storage/migration")
          .target(schema)
          .load()
          .migrate();
    } catch (FlywayException stuck) {
      connections.close();
      throw new BadInput(
          shown, Message.of("fault.schema-stuck", String.valueOf(stuck.getMessage())));
    }
    Database open = new Database(connections);
    if (schema.equals(NEWEST)) {
      new StoredLedger(open.sql()).begin();
    }
    return open;
  }

  /** A SQLite file that is looked at alone: nothing is made, brought up to date or written. */
  public static Database reading(Path file) throws BadInput {
    String url = "jdbc:sqlite:" + file.toAbsolutePath() + "?open_mode=1&busy_timeout=30000";
    return new Database(connect(url, file.toString(), true));
  }

  /** The same for a PostgreSQL database. */
  public static Database readingServer(String jdbcUrl) throws BadInput {
    return new Database(connect(sound(jdbcUrl), SERVER, true));
  }

  private static HikariDataSource connect(String url, String shown, boolean readOnly)
      throws BadInput {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(url);
    config.setMaximumPoolSize(6);
    config.setMinimumIdle(1);
    // a server that is away is told of within five seconds; writers of a file wait for their turn
    config.setConnectionTimeout(url.startsWith(POSTGRES) ? 4_000 : 30_000);
    config.setPoolName("kerfwright");
    config.setReadOnly(readOnly);
    try {
      return new HikariDataSource(config);
    } catch (HikariPool.PoolInitializationException unreachable) {
      throw new BadInput(
          shown, Message.of("fault.not-opened", String.valueOf(unreachable.getMessage())));
    }
  }

  /** What SQLite finds wrong in the file itself, empty where it is sound or not SQLite's. */
  public List<String> damage() {
    if (onServer()) {
      return List.of();
    }
    try (Snapshot now = Snapshot.of(this)) {
      List<String> found = now.sql().list(String.class, "PRAGMA quick_check(20)");
      return found.equals(List.of("ok")) ? List.of() : found;
    } catch (JdbiException unreadable) {
      Throwable why = unreadable.getCause() == null ? unreadable : unreadable.getCause();
      return List.of(String.valueOf(why.getMessage()));
    }
  }

  /** For those of this process who want to write at once: first come, first served. */
  public Lock turn() {
    return turn;
  }

  public Sql sql() {
    return sql;
  }

  Jdbi jdbi() {
    return jdbi;
  }

  /** True on PostgreSQL. */
  public boolean onServer() {
    return connections.getJdbcUrl().startsWith(POSTGRES);
  }

  /** URL of connections that only read: their transactions hold nobody up. */
  String urlForReading() {
    return connections.getJdbcUrl().replace(WRITING, "");
  }

  @Override
  public void close() {
    connections.close();
  }
}
