package kerfwright.app.storage;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool;
import java.nio.file.Path;
import kerfwright.app.input.BadInput;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;

/** An open database at the newest schema; SQLite and PostgreSQL carry the same one. */
public final class Database implements AutoCloseable {
  private static final String SQLITE_SETTINGS =
      "?journal_mode=WAL&synchronous=FULL&busy_timeout=5000&foreign_keys=true"
          + "&transaction_mode=IMMEDIATE";

  private final HikariDataSource connections;
  private final Jdbi jdbi;

  private Database(HikariDataSource connections) {
    this.connections = connections;
    this.jdbi = Jdbi.create(connections);
  }

  /** Opens a SQLite file; makes it where there is none. */
  public static Database file(Path file) throws BadInput {
    return open("jdbc:sqlite:" + file.toAbsolutePath() + SQLITE_SETTINGS, file.toString());
  }

  /** Opens a PostgreSQL database by its JDBC URL. */
  public static Database server(String jdbcUrl) throws BadInput {
    if (!jdbcUrl.startsWith("jdbc:postgresql:")) {
      throw new BadInput("database", "must be a JDBC URL that starts with jdbc:postgresql:");
    }
    // the URL may hold a password: it is not shown
    return open(jdbcUrl, "the PostgreSQL database");
  }

  private static Database open(String url, String shown) throws BadInput {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(url);
    config.setMaximumPoolSize(6);
    config.setMinimumIdle(1);
    config.setConnectionTimeout(10_000);
    config.setPoolName("kerfwright");
    HikariDataSource connections;
    try {
      connections = new HikariDataSource(config);
    } catch (HikariPool.PoolInitializationException unreachable) {
      throw new BadInput(shown, "cannot be opened: " + unreachable.getMessage());
    }
    try {
      Flyway.configure()
          .dataSource(connections)
          .locations("classpath:kerfwright/app/storage/migration")
          .load()
          .migrate();
    } catch (FlywayException stuck) {
      connections.close();
      throw new BadInput(
          shown, "cannot be brought to this program's schema: " + stuck.getMessage());
    }
    return new Database(connections);
  }

  Jdbi jdbi() {
    return jdbi;
  }

  @Override
  public void close() {
    connections.close();
  }
}
