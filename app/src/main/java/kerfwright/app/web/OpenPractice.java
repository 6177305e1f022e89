package kerfwright.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerfwright.app.backup.Backups;
import kerfwright.app.backup.Watch;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.demo.DemoClock;
import kerfwright.app.demo.DemoDays;
import kerfwright.app.demo.DemoHistory;
import kerfwright.app.demo.DemoPractice;
import kerfwright.app.input.BadFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.SourceText;
import kerfwright.app.learning.LearningService;
import kerfwright.app.stocklist.Drafts;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Newest;
import kerfwright.app.storage.Private;
import kerfwright.app.storage.Seal;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.storage.cases.StoredDays;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.Packages;
import kerfwright.app.storage.stock.PurchaseRequests;
import kerfwright.app.storage.stock.StoredDrafts;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.storage.stock.StoredLoads;
import kerfwright.app.storage.stock.StoredOrigins;
import kerfwright.app.storage.teaching.Handouts;
import kerfwright.app.storage.teaching.Lessons;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.reprocessing.Reach;
import kerfwright.practice.setting.Settings;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** The practice's data while the program runs: opened, filled the first time, closed at the end. */
public final class OpenPractice implements AutoCloseable {
  private static final String BACKUPS = "backups";

  private final Clock clock = Clock.systemDefaultZone();
  private final Database database;
  private final DrawerService service;
  private final LearningService learning;
  private final RecordService record;
  private final LoadService loads;
  private final @Nullable Path temporary;
  private final @Nullable Backups backups;
  private final @Nullable Watch watch;

  private OpenPractice(Database database, @Nullable Path temporary, @Nullable Path folder)
      throws IOException {
    this.database = database;
    this.temporary = temporary;
    Services now = Services.over(database, clock);
    this.service = now.drawer();
    this.record = now.record();
    this.loads = now.loads();
    this.learning =
        new LearningService(
            record.record(), new CutRuns(database), service.drawer(), new StoredSettings(database));
    this.watch = folder == null ? null : new Watch(database, folder);
    this.backups =
        temporary == null
            ? new Backups(
                database,
                new StoredSettings(database),
                folder == null ? null : folder.resolve(BACKUPS),
                watch,
                clock)
            : null;
  }

  /** The services that change what is kept, by one clock. */
  private record Services(DrawerService drawer, RecordService record, LoadService loads) {
    static Services over(Database database, Clock clock) {
      TimeOrderedIds ids = new TimeOrderedIds(clock, new SecureRandom());
      Newest.ids(database).forEach(ids::after);
      Drawer drawer = new StoredDrawer(database);
      StoredRecord record = new StoredRecord(database);
      StoredLoads loads = new StoredLoads(database);
      return new Services(
          new DrawerService(drawer, ids, clock),
          new RecordService(
              record,
              drawer,
              new StoredOrigins(database, clock),
              new StoredSettings(database),
              ids,
              clock),
          new LoadService(
              loads,
              drawer,
              new StoredSettings(database),
              new Reach(loads, drawer, record),
              ids,
              clock));
    }
  }

  /** Opens what the options name; without a place, a drawer that lasts as long as the program. */
  public static OpenPractice of(ServeOptions options) throws BadInput {
    String url = System.getenv(Database.VARIABLE);
    Path folder = options.data();
    OpenPractice open;
    if (url != null && !url.isBlank()) {
      if (folder != null) {
        throw new BadInput("--data", Message.of("command.both-given", Database.VARIABLE));
      }
      open = over(Database.server(url.strip()), null);
    } else if (folder == null) {
      open = temporary();
    } else {
      open = kept(folder.toAbsolutePath());
    }
    try {
      if (options.demo() && !new Accounts(open.database).all().isEmpty()) {
        throw new BadInput("--demo", Message.of("command.serve-demo-people"));
      }
      open.fill(folder, options.demo());
      return open;
    } catch (BadInput | RuntimeException failed) {
      open.close();
      throw failed;
    }
  }

  private static OpenPractice over(Database database, @Nullable Path folder) throws BadInput {
    try {
      return new OpenPractice(database, null, folder);
    } catch (IOException unreadable) {
      database.close();
      throw new BadInput("--data", Message.of("fault.cannot-be-used", BadFile.why(unreadable)));
    }
  }

  /** What cannot be opened is told with the backup that can be restored. */
  private static OpenPractice kept(Path folder) throws BadInput {
    Path file = inside(folder);
    try {
      Optional<Seal> seal = Seal.in(folder);
      if (!Files.exists(file) && seal.isPresent()) {
        throw new BadInput(
            file.toString(),
            Message.of("backup.file-gone", Seal.FILE, (int) seal.get().record().number()));
      }
      return over(Database.file(Private.file(file)), folder);
    } catch (BadInput | IOException | RuntimeException unusable) {
      List<Fault> faults = new ArrayList<>();
      if (unusable instanceof BadInput told) {
        faults.addAll(told.faults());
      } else {
        Message why = Message.of("fault.cannot-be-used", BadFile.why(unusable));
        faults.add(new Fault(file.toString(), 0, "", why, null));
      }
      Backups.newestIn(folder.resolve(BACKUPS))
          .ifPresent(
              backup ->
                  faults.add(
                      new Fault(
                          BACKUPS, 0, "", Message.of("backup.last-to-restore", backup), null)));
      throw new BadInput(faults);
    }
  }

  private static Path inside(Path folder) throws BadInput {
    Path parent = folder.toAbsolutePath().getParent();
    if (parent != null && !Files.isDirectory(parent)) {
      throw new BadInput("--data", Message.of("fault.no-folder", parent.toString()));
    }
    try {
      return Private.folder(folder).resolve(Database.FILE);
    } catch (IOException refused) {
      throw new BadInput("--data", Message.of("fault.folder-not-made", folder.toString()));
    }
  }

  private static OpenPractice temporary() throws BadInput {
    try {
      Path folder = Files.createTempDirectory("kerfwright");
      return new OpenPractice(Database.temporary(folder.resolve(Database.FILE)), folder, null);
    } catch (IOException refused) {
      throw new BadInput("--data", Message.of("command.serve-no-temporary"));
    }
  }

  /** A drawer nothing was ever put into takes the folder's drawer.csv, or the demo practice's. */
  private void fill(@Nullable Path folder, boolean demo) throws BadInput {
    if (service.drawer().revision() > 0) {
      return;
    }
    Path own = folder == null ? null : folder.resolve("drawer.csv");
    if (own != null && Files.exists(own)) {
      FirstDrawer.fill(SourceText.of(own), "drawer.csv", service);
    } else if (demo) {
      DemoClock past = DemoClock.threeDaysBefore(clock);
      Services then = Services.over(database, past);
      FirstDrawer.fill(DemoPractice.drawerText(), "demo practice", then.drawer());
      new DemoHistory(then.drawer(), then.record(), then.loads(), past)
          .fill(settings(), clock.instant());
      FirstDrawer.fill(DemoPractice.morePiecesText(), "demo practice", service);
      FirstDrawer.fill(DemoPractice.piecesText(), "demo practice", service);
      DemoDays.keep(days(), LocalDate.now(clock));
    }
  }

  public DrawerService service() {
    return service;
  }

  /** The cut record, with the drawer that moves with it. */
  public RecordService record() {
    return record;
  }

  public LoadService loads() {
    return loads;
  }

  public Drafts drafts() {
    return new StoredDrafts(database, clock);
  }

  public DayBooks days() {
    return new StoredDays(database, clock);
  }

  /** What planned days lack and is to be ordered. */
  public PurchaseRequests requests() {
    return new PurchaseRequests(database);
  }

  public Settings settings() {
    return new StoredSettings(database);
  }

  /** Cases kept when they were planned. */
  public KeptCases keptCases() {
    return new KeptCases(database);
  }

  /** Questions, sets and answers of learners. */
  public Lessons lessons() {
    return new Lessons(database);
  }

  public Handouts handouts() {
    return new Handouts(database);
  }

  /** Runs at the chair. */
  public CutRuns runs() {
    return new CutRuns(database);
  }

  /** What the practice's log teaches; the same for plans and pages. */
  public LearningService learning() {
    return learning;
  }

  public Packages packages() {
    return new Packages(database);
  }

  /** Watches the practice's file; null where it is none, or nothing is kept. */
  public @Nullable Watch watch() {
    return watch;
  }

  /** Backups by the clock; null where nothing is kept beyond the end of the program. */
  public @Nullable Backups backups() {
    return backups;
  }

  /** The one clock of the program. */
  public Clock clock() {
    return clock;
  }

  /** For the storages of the features. */
  public Database database() {
    return database;
  }

  /** True where nothing is kept beyond the end of the program. */
  public boolean isTemporary() {
    return temporary != null;
  }

  @Override
  public void close() {
    if (backups != null) {
      backups.close();
    }
    if (watch != null) {
      watch.close();
    }
    database.close();
    if (temporary != null) {
      try (Stream<Path> files = Files.walk(temporary)) {
        files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
      } catch (IOException leftBehind) {
        // the machine clears its temporary folder
      }
    }
  }
}
