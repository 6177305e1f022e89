package kerfwright.app.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Chains;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Newest;
import kerfwright.app.storage.Seal;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.today.ClockNotices;
import org.jspecify.annotations.Nullable;

/** Looks a practice over, writing nothing: what is well, and what to do about the rest. */
final class Checkup {
  private static final long SCARCE_BYTES = 1L << 30;
  private static final long NO_ROOM_BYTES = 100L << 20;
  private static final int FIRST_YEAR = 2025;
  private static final Set<PosixFilePermission> OWNERS =
      EnumSet.of(
          PosixFilePermission.OWNER_READ,
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.OWNER_EXECUTE);

  /** How a finding stands. */
  enum State {
    WELL,
    WATCH,
    ILL
  }

  /**
   * One finding.
   *
   * @param state how it stands
   * @param key what is said
   * @param values what is filled in
   */
  record Finding(State state, String key, List<Object> values) {}

  private final @Nullable Path folder;
  private final Clock clock;
  private final List<Finding> found = new ArrayList<>();

  private Checkup(@Nullable Path folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /**
   * @param folder the practice's folder, null where it is on a database server
   */
  static List<Finding> of(@Nullable Path folder, Clock clock) throws BadInput {
    Checkup checkup = new Checkup(folder, clock);
    checkup.add(State.WELL, "doctor.java", Runtime.version().feature());
    if (folder != null && !Files.isDirectory(folder)) {
      checkup.add(State.ILL, "doctor.folder-missing", folder.toAbsolutePath());
      return checkup.found;
    }
    checkup.place();
    try (Database database = Place.reading(folder)) {
      checkup.look(database);
    } catch (BadInput closed) {
      checkup.add(State.ILL, "doctor.closed", closed.faults().get(0).placed());
    }
    return checkup.found;
  }

  private void add(State state, String key, Object... values) {
    found.add(new Finding(state, key, List.of(values)));
  }

  private void place() {
    if (folder == null) {
      return;
    }
    try {
      boolean open =
          folder.getFileSystem().supportedFileAttributeViews().contains("posix")
              && !OWNERS.containsAll(Files.getPosixFilePermissions(folder));
      if (open) {
        add(State.WATCH, "doctor.folder-open", folder);
      } else if (Files.isWritable(folder)) {
        add(State.WELL, "doctor.folder", folder);
      } else {
        add(State.ILL, "doctor.folder-forbidden", folder);
      }
      long free = Files.getFileStore(folder).getUsableSpace();
      State room =
          free < NO_ROOM_BYTES ? State.ILL : free < SCARCE_BYTES ? State.WATCH : State.WELL;
      add(room, room == State.WELL ? "doctor.room" : "doctor.little-room", free >> 20, folder);
    } catch (IOException unreadable) {
      add(State.ILL, "doctor.folder-forbidden", folder);
    }
  }

  private void look(Database database) {
    List<String> damage = database.damage();
    if (!damage.isEmpty()) {
      add(State.ILL, "doctor.damaged", damage.get(0));
      return;
    }
    add(State.WELL, "doctor.sound");
    chains(database);
    clock(database);
    backups(database);
  }

  private void chains(Database database) {
    Chains chains = Chains.of(database);
    if (chains.hold()) {
      add(
          State.WELL,
          "doctor.chains",
          chains.record().sound().number(),
          chains.ledger().sound().number(),
          chains.trail().sound().number());
    } else {
      add(State.ILL, "doctor.chain-broken");
    }
    if (folder == null) {
      return;
    }
    try {
      Optional<Seal> seal = Seal.in(folder);
      if (seal.isEmpty()) {
        add(State.WATCH, "doctor.no-seal");
      } else if (seal.get().holdsIn(database)) {
        add(State.WELL, "doctor.seal", seal.get().record().number());
      } else {
        add(State.ILL, "doctor.seal-broken", seal.get().record().number());
      }
    } catch (IOException unreadable) {
      add(State.WATCH, "doctor.no-seal");
    }
  }

  private void clock(Database database) {
    boolean behind = LocalDateTime.now(clock).getYear() < FIRST_YEAR;
    boolean ahead =
        Newest.time(database)
            .filter(at -> at.isAfter(clock.instant().plus(ClockNotices.MAY_DIFFER)))
            .isPresent();
    add(
        behind || ahead ? State.ILL : State.WELL,
        behind || ahead ? "doctor.clock-wrong" : "doctor.clock",
        LocalDateTime.now(clock).withNano(0));
  }

  private void backups(Database database) {
    Path usual = folder == null ? null : folder.toAbsolutePath().resolve("backups");
    Path place = BackupPlan.of(new StoredSettings(database).read(), usual).folder();
    if (place == null || !Files.isDirectory(place)) {
      add(State.ILL, "doctor.no-backup");
      return;
    }
    LocalDateTime now = LocalDateTime.now(clock);
    List<BackupFile> all = Backups.files(place);
    Optional<BackupFile> last =
        all.stream().filter(one -> !one.at().isAfter(now.plusMinutes(5))).findFirst();
    if (last.isEmpty()) {
      add(State.ILL, "doctor.no-backup");
      return;
    }
    Duration age = Duration.between(last.get().at(), now);
    boolean old = age.compareTo(Backups.OLD) > 0;
    add(
        old ? State.ILL : State.WELL,
        old ? "doctor.backup-old" : "doctor.backup",
        last.get().file(),
        age.toDays());
    if (usual != null && place.startsWith(usual)) {
      add(State.WATCH, "doctor.backup-same-disk");
    }
  }
}
