package kerfwright.app.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import kerfwright.app.input.BadFile;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Private;
import kerfwright.app.today.ClockNotices;
import kerfwright.practice.setting.Settings;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Makes backups by the clock and on request, keeps some, and knows when the last one is old. */
public final class Backups implements AutoCloseable {
  /** A backup older than this is warned of. */
  static final Duration OLD = Duration.ofDays(2);

  private static final Logger LOG = LoggerFactory.getLogger(Backups.class);

  private final Database database;
  private final Settings settings;
  private final @Nullable Path usualFolder;
  private final Clock clock;
  private final @Nullable Watch watch;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          run -> {
            Thread thread = new Thread(run, "backup");
            thread.setDaemon(true);
            return thread;
          });
  private volatile boolean running;
  private volatile @Nullable Message fault;
  private volatile Optional<LocalDateTime> last = Optional.empty();

  /**
   * @param usualFolder where backups go when the settings name no folder; null where there is none
   * @param watch what knows of damage; null where the practice is no file
   */
  public Backups(
      Database database,
      Settings settings,
      @Nullable Path usualFolder,
      @Nullable Watch watch,
      Clock clock) {
    this.watch = watch;
    this.database = database;
    this.settings = settings;
    this.usualFolder = usualFolder;
    this.clock = clock;
  }

  /** Looks every minute whether one is due. */
  public void start() {
    look();
    worker.scheduleWithFixedDelay(this::tick, 1, 60, TimeUnit.SECONDS);
  }

  public BackupPlan plan() {
    return BackupPlan.of(settings.read(), usualFolder);
  }

  void tick() {
    try {
      look();
      BackupPlan plan = plan();
      ZonedDateTime now = ZonedDateTime.now(clock);
      if (plan.folder() != null && plan.due(now, last.map(at -> at.atZone(now.getZone())))) {
        make();
      }
    } catch (RuntimeException failed) {
      fault = BadFile.why(failed);
      LOG.error("The backup failed", failed);
    }
  }

  private void look() {
    last = sound(files()).stream().map(BackupFile::at).max(Comparator.naturalOrder());
  }

  /** Those whose time has come: a clock that ran ahead has made the others. */
  private List<BackupFile> sound(List<BackupFile> files) {
    LocalDateTime latest = LocalDateTime.now(clock).plus(ClockNotices.MAY_DIFFER);
    return files.stream().filter(one -> !one.at().isAfter(latest)).toList();
  }

  /** How many are dated in the future. */
  int ahead() {
    List<BackupFile> files = files();
    return files.size() - sound(files).size();
  }

  /** Makes one in the background. */
  void request() {
    running = true;
    worker.execute(this::make);
  }

  /** Makes one now, and lets go of those no longer kept. */
  synchronized void make() {
    BackupPlan plan = plan();
    Path folder = plan.folder();
    running = true;
    try {
      if (folder == null) {
        throw new BadFile("backup.no-folder");
      }
      List<String> damage = database.damage();
      if (watch != null && watch.stopped() || !damage.isEmpty()) {
        // a damaged practice pushes no sound backup out
        if (watch != null) {
          watch.lookForDamage();
        }
        throw new BadFile("backup.not-sound", String.join("; ", damage));
      }
      if (outside(folder)) {
        Files.createDirectories(folder);
      } else {
        Private.folder(folder);
      }
      clearOrphans(folder);
      LocalDateTime now = LocalDateTime.now(clock);
      Path file = folder.resolve(BackupFile.name(now));
      String key = outside(folder) ? BackupKey.of(settings) : null;
      Archive.write(database, file, clock.instant(), key);
      for (BackupFile one : Rotation.superfluous(sound(files()), plan.daily(), plan.weekly())) {
        Files.deleteIfExists(one.file());
      }
      fault = null;
    } catch (IOException | RuntimeException failed) {
      fault = BadFile.why(failed);
      LOG.error("The backup failed", failed);
    } finally {
      look();
      running = false;
    }
  }

  /** Those in the folder, newest first. */
  List<BackupFile> files() {
    return files(plan().folder());
  }

  /** Full name of the newest in a folder, whatever its date. */
  public static Optional<String> newestIn(Path folder) {
    return files(folder).stream().findFirst().map(one -> one.file().toString());
  }

  static List<BackupFile> files(@Nullable Path folder) {
    if (folder == null || !Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      List<BackupFile> files =
          new ArrayList<>(all.map(BackupFile::of).flatMap(Optional::stream).toList());
      files.sort(Comparator.comparing(BackupFile::at).reversed());
      return files;
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  boolean running() {
    return running;
  }

  /** What went wrong the last time, null where nothing did. */
  @Nullable Message fault() {
    return fault;
  }

  /** True where that folder is not the practice's own: what lies there is locked. */
  private boolean outside(Path folder) {
    return usualFolder == null || !folder.normalize().startsWith(usualFolder.normalize());
  }

  /** Where they may go. */
  BackupRoots roots() {
    return BackupRoots.ofThisMachine(usualFolder);
  }

  /** The key of backups that leave the practice's folder; empty where none do. */
  String key() {
    Path folder = plan().folder();
    return folder != null && outside(folder) ? BackupKey.of(settings) : "";
  }

  /** What a process that was ended left half written, hours ago. */
  private static void clearOrphans(Path folder) throws IOException {
    FileTime old = FileTime.from(Instant.now().minus(Duration.ofHours(1)));
    try (Stream<Path> all = Files.list(folder)) {
      for (Path one : all.toList()) {
        if (one.getFileName().toString().matches("kerfwright-\\d{8}-\\d{4}\\.zip\\.part")
            && Files.getLastModifiedTime(one).compareTo(old) < 0) {
          Files.deleteIfExists(one);
        }
      }
    }
  }

  /** Full name of the newest backup, empty where there is none. */
  String newest() {
    return sound(files()).stream().findFirst().map(one -> one.file().toString()).orElse("");
  }

  Optional<LocalDateTime> last() {
    return last;
  }

  /** Days since the last backup where that is too long; -1 where there is none at all. */
  public Optional<Long> daysTooOld() {
    if (last.isEmpty()) {
      return Optional.of(-1L);
    }
    Duration age = Duration.between(last.get(), LocalDateTime.now(clock));
    return age.compareTo(OLD) > 0 ? Optional.of(age.toDays()) : Optional.empty();
  }

  @Override
  public void close() {
    worker.shutdown();
    try {
      // one that has begun is finished
      worker.awaitTermination(60, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
