package kerfwright.app.storage;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
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

  private static final Pattern TEXT =
      Pattern.compile(
          "record (\\d{1,18}):([0-9a-f]{64})\nledger (\\d{1,18}):([0-9a-f]{64})\n"
              + "(?:trail (\\d{1,18}):([0-9a-f]{64})\n)?");

  /** Of a database as it stands. */
  public static Seal of(Database database) {
    try (Snapshot now = Snapshot.of(database)) {
      return now.seal();
    }
  }

  static Seal of(Sql sql) {
    return new Seal(end(sql, "cut_record_end"), end(sql, "ledger_end"), end(sql, "trail_end"));
  }

  /** A schema from before a chain has it empty. */
  private static Chain end(Sql sql, String table) {
    if (!sql.has(table)) {
      return Chain.EMPTY;
    }
    Chain end = new ChainEnd(sql, table).read();
    return end.equals(ChainEnd.NONE) ? end : new Chain(Math.max(0, end.number()), end.hash());
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
    try (Snapshot now = Snapshot.of(database)) {
      return stands(now.sql(), "cut_record", record)
          && stands(now.sql(), "ledger", ledger)
          && (trail == null || stands(now.sql(), "trail", trail));
    }
  }

  private static boolean stands(Sql sql, String table, Chain link) {
    String hash = "SELECT hash FROM " + table + " WHERE number = ?";
    return link.number() == 0
        || sql.has(table)
            && sql.one(String.class, hash, link.number()).equals(Optional.of(link.hash()));
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
            new Seal(link(all, 1), link(all, 3), all.group(5) == null ? null : link(all, 5)))
        : Optional.empty();
  }

  private static Chain link(Matcher all, int group) {
    return new Chain(Long.parseLong(all.group(group)), all.group(group + 1));
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
