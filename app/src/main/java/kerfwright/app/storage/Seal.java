package kerfwright.app.storage;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.practice.record.Chain;
import org.jspecify.annotations.Nullable;

/**
 * Number and hash of the last entry of the record, of the last line of the ledger and of the trail,
 * kept beside the database and in every backup: what lacks entries that a seal names, or has others
 * in their place, is not the database it was.
 *
 * @param record end of the cut record
 * @param ledger end of the ledger of drawer and loads
 * @param trail end of the trail; null in a seal from before it was named, which says nothing of it
 */
public record Seal(Chain record, Chain ledger, @Nullable Chain trail) {
  /** The file beside the database. */
  public static final String FILE = "kerfwright.seal";

  /** Where there is not one end, which no chain fits. */
  private static final Chain NONE = new Chain(-1, "");

  private static final Pattern TEXT =
      Pattern.compile(
          "record (\\d{1,18}):([0-9a-f]{64})\nledger (\\d{1,18}):([0-9a-f]{64})\n"
              + "(?:trail (\\d{1,18}):([0-9a-f]{64})\n)?");

  /** Of a database as it stands. */
  public static Seal of(Database database) {
    try (Connection connection = DriverManager.getConnection(database.urlForReading())) {
      return of(connection);
    } catch (SQLException failed) {
      throw new IllegalStateException("The database cannot be read", failed);
    }
  }

  static Seal of(Connection connection) throws SQLException {
    return new Seal(
        end(connection, "cut_record_end"),
        end(connection, "ledger_end"),
        end(connection, "trail_end"));
  }

  static boolean has(Connection connection, String table) throws SQLException {
    try (ResultSet found =
        connection
            .getMetaData()
            .getTables(null, connection.getSchema(), table, new String[] {"TABLE"})) {
      return found.next();
    }
  }

  /** A schema from before a chain has it empty. */
  private static Chain end(Connection connection, String table) throws SQLException {
    if (!has(connection, table)) {
      return Chain.EMPTY;
    }
    try (Statement ask = connection.createStatement();
        ResultSet row = ask.executeQuery("SELECT number, hash FROM " + table)) {
      if (!row.next()) {
        return NONE;
      }
      Chain end = new Chain(Math.max(0, row.getLong(1)), row.getString(2));
      return row.next() ? NONE : end;
    }
  }

  /** True where each chain has one end, as it always does. */
  public boolean whole() {
    return record.number() >= 0 && ledger.number() >= 0 && (trail == null || trail.number() >= 0);
  }

  /** True where both name the same ends, as far as both name them. */
  public boolean agrees(Seal other) {
    return record.equals(other.record)
        && ledger.equals(other.ledger)
        && (trail == null || other.trail == null || trail.equals(other.trail));
  }

  /** True where that database still holds every link this seal names. */
  public boolean holdsIn(Database database) {
    try (Connection connection = DriverManager.getConnection(database.urlForReading())) {
      return holdsIn(connection);
    } catch (SQLException failed) {
      throw new IllegalStateException("The database cannot be read", failed);
    }
  }

  boolean holdsIn(Connection connection) throws SQLException {
    return stands(connection, "cut_record", record)
        && stands(connection, "ledger", ledger)
        && (trail == null || stands(connection, "trail", trail));
  }

  private static boolean stands(Connection connection, String table, Chain link)
      throws SQLException {
    if (link.number() == 0) {
      return true;
    }
    if (!has(connection, table)) {
      return false;
    }
    try (Statement ask = connection.createStatement();
        ResultSet row =
            ask.executeQuery("SELECT hash FROM " + table + " WHERE number = " + link.number())) {
      return row.next() && link.hash().equals(row.getString(1));
    }
  }

  public String text() {
    return line("record", record)
        + line("ledger", ledger)
        + (trail == null ? "" : line("trail", trail));
  }

  private static String line(String name, Chain end) {
    return name + " " + end.number() + ":" + end.hash() + "\n";
  }

  /** Empty where the text is no seal. */
  public static Optional<Seal> of(String text) {
    Matcher all = TEXT.matcher(text);
    return all.matches()
        ? Optional.of(
            new Seal(
                new Chain(Long.parseLong(all.group(1)), all.group(2)),
                new Chain(Long.parseLong(all.group(3)), all.group(4)),
                all.group(5) == null
                    ? null
                    : new Chain(Long.parseLong(all.group(5)), all.group(6))))
        : Optional.empty();
  }

  /** The one in that folder; a file that cannot be read as one says nothing. */
  public static Optional<Seal> in(Path folder) throws IOException {
    try {
      return of(Files.readString(folder.resolve(FILE)));
    } catch (NoSuchFileException none) {
      return Optional.empty();
    }
  }

  /** Keeps it in that folder; the one before stands until this one is whole. */
  public void keep(Path folder) throws IOException {
    Path part = folder.resolve(FILE + ".part");
    Files.writeString(Private.file(part), text(), StandardCharsets.UTF_8);
    try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
      written.force(true);
    }
    Files.move(
        part,
        folder.resolve(FILE),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
    Private.sync(part);
  }
}
