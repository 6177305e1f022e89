package kerfwright.app.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Seal;
import kerfwright.practice.record.Chain;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Watches a practice's file while the program runs: keeps its seal beside it, looks for damage, and
 * notices when somebody takes the file away.
 */
public final class Watch implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Watch.class);
  private static final int EVERY_S = 2;

  /** What is wrong with the file. */
  public enum Kind implements Identified {
    /** Entries the seal names are not in it. */
    OTHER_THAN_SEALED(false),
    /** SQLite finds it damaged. */
    DAMAGED(true),
    /** It was deleted or another was put in its place. */
    GONE(true);

    private final boolean stopsWriting;

    Kind(boolean stopsWriting) {
      this.stopsWriting = stopsWriting;
    }

    public boolean stopsWriting() {
      return stopsWriting;
    }

    /** What pages say of it. */
    public String words() {
      return switch (this) {
        case OTHER_THAN_SEALED -> "backup.trouble-seal";
        case DAMAGED -> "backup.trouble-damaged";
        case GONE -> "backup.trouble-gone";
      };
    }
  }

  /**
   * What is the matter.
   *
   * @param kind in what way
   * @param file the database, or the seal it does not fit
   * @param detail figures of it, may be empty
   */
  public record Trouble(Kind kind, Path file, String detail) {}

  private final Database database;
  private final Path folder;
  private final Path file;
  private final String identity;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          run -> {
            Thread thread = new Thread(run, "watch");
            thread.setDaemon(true);
            return thread;
          });
  private volatile @Nullable Trouble trouble;
  private @Nullable Seal kept;

  /** Compares the database with the seal beside it at once. */
  public Watch(Database database, Path folder) throws IOException {
    this.database = database;
    this.folder = folder;
    this.file = folder.resolve(Database.FILE);
    this.identity = identity(file);
    if (!Seal.of(database).whole()) {
      tell(Kind.DAMAGED, file, "cut_record_end, ledger_end, trail_end");
    }
    Optional<Seal> seal = Seal.in(folder);
    if (seal.isPresent() && !seal.get().holdsIn(database)) {
      tell(
          Kind.OTHER_THAN_SEALED,
          folder.resolve(Seal.FILE),
          numbers(seal.get()) + "; " + numbers(Seal.of(database)));
    }
  }

  private static String numbers(Seal seal) {
    Chain trail = seal.trail();
    return seal.record().number()
        + " / "
        + seal.ledger().number()
        + (trail == null ? "" : " / " + trail.number());
  }

  /** Goes on by itself; looks for damage first. */
  public void start() {
    worker.execute(this::lookForDamage);
    worker.scheduleWithFixedDelay(this::look, EVERY_S, EVERY_S, TimeUnit.SECONDS);
  }

  /** Looks for damage now; empty where there is none. */
  public List<String> lookForDamage() {
    List<String> damage = database.damage();
    if (!damage.isEmpty()) {
      tell(Kind.DAMAGED, file, String.join("; ", damage.subList(0, Math.min(3, damage.size()))));
    }
    return damage;
  }

  void look() {
    try {
      if (!identity.equals(identity(file))) {
        tell(Kind.GONE, file, "");
      } else if (trouble == null) {
        seal();
      }
    } catch (IOException gone) {
      tell(Kind.GONE, file, "");
    } catch (RuntimeException failed) {
      LOG.error("The seal could not be kept", failed);
    }
  }

  /** Keeps the seal where it has changed. */
  private synchronized void seal() throws IOException {
    Seal now = Seal.of(database);
    if (!now.equals(kept)) {
      now.keep(folder);
      kept = now;
    }
  }

  private void tell(Kind kind, Path about, String detail) {
    Trouble now = new Trouble(kind, about, detail);
    Trouble before = trouble;
    if (before == null || kind.compareTo(before.kind()) > 0) {
      trouble = now;
      LOG.error("{}: {} {}", kind, about, detail);
    }
  }

  private static String identity(Path file) throws IOException {
    BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
    return Objects.toString(is.fileKey(), is.creationTime().toString());
  }

  /** What is the matter with the file, if anything. */
  public Optional<Trouble> trouble() {
    return Optional.ofNullable(trouble);
  }

  /** True where nothing may be written any more. */
  public boolean stopped() {
    Trouble now = trouble;
    return now != null && now.kind().stopsWriting();
  }

  @Override
  public void close() {
    worker.shutdown();
    try {
      worker.awaitTermination(30, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    look();
  }
}
