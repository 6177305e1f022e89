package kerfwright.practice.reprocessing;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/**
 * Makes loads, reads their indicators, releases or fails them. Nothing becomes clean but by a load
 * that a person of an allowed role released.
 */
public final class LoadService {
  private final Loads loads;
  private final Drawer drawer;
  private final Settings settings;
  private final Reach reach;
  private final TimeOrderedIds ids;
  private final Clock clock;

  public LoadService(
      Loads loads, Drawer drawer, Settings settings, Reach reach, TimeOrderedIds ids, Clock clock) {
    this.loads = loads;
    this.drawer = drawer;
    this.settings = settings;
    this.reach = reach;
    this.ids = ids;
    this.clock = clock;
  }

  public Loads loads() {
    return loads;
  }

  /** As fine as every database keeps it. */
  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  /** Puts instruments into a steriliser and starts it. */
  public LoadOutcome start(NewLoad wanted) {
    return inTurn(
        () -> {
          SettingValues set = settings.read();
          ReprocessingSetting own = ReprocessingSetting.of(set);
          Instant now = now();
          LoadCheck check = new LoadCheck(drawer, set);
          check.person(wanted.by());
          check.cycle(wanted.cycle(), own);
          check.steriliser(wanted.steriliser(), own, loads.running(), now);
          check.inService(
              SteriliserLock.of(loads, wanted.steriliser()), wanted.pouches().isEmpty());
          List<List<StockItem>> packed = check.contents(wanted.pouches());
          check.hollow(wanted.cycle(), packed);
          if (!check.refusals().isEmpty()) {
            return new LoadOutcome(null, check.refusals());
          }
          String name = freeName(wanted.steriliser(), now);
          LocalDate last = own.lastDay(day(now));
          Moves moves = new Moves(name, now, DrawerEntry.What.LOADED);
          List<Pouch> pouches = new ArrayList<>();
          for (int i = 0; i < packed.size(); i++) {
            List<Pouch.Content> contents =
                packed.get(i).stream().map(o -> new Pouch.Content(o.id(), o.label())).toList();
            String setName = wanted.pouches().get(i).set();
            pouches.add(new Pouch(ids.next(), name + "." + (i + 1), setName, contents, last));
            packed.get(i).forEach(item -> moves.to(item, InstrumentState.IN_LOAD));
          }
          LoadEvent event = new LoadEvent(now, wanted.by(), LoadEvent.What.STARTED, null, null, "");
          Load load =
              new Load(
                  ids.next(),
                  1,
                  name,
                  wanted.steriliser(),
                  wanted.cycle(),
                  now,
                  own.minutesOf(wanted.cycle()),
                  Load.State.RUNNING,
                  pouches,
                  List.of(event));
          return written(load, moves);
        });
  }

  private LocalDate day(Instant at) {
    return at.atZone(clock.getZone()).toLocalDate();
  }

  private String freeName(String steriliser, Instant now) {
    LocalDate today = day(now);
    Instant from = today.atStartOfDay(clock.getZone()).toInstant();
    Instant until = today.plusDays(1).atStartOfDay(clock.getZone()).toInstant();
    int number = loads.of(steriliser, from, until).size() + 1;
    return steriliser + "-" + DateTimeFormatter.BASIC_ISO_DATE.format(today) + "-" + number;
  }

  /** Writes down what the indicators show; a released load takes the spore test alone. */
  public LoadOutcome read(
      UUID id, int version, Map<Indicator, Indicator.Result> results, String by) {
    return inTurn(
        () -> {
          Load load = loads.find(id).orElse(null);
          LoadCheck check = new LoadCheck(drawer, settings.read());
          check.person(by);
          if (check.is(load, version)) {
            check.readable(load, results, now());
          }
          if (load == null || !check.refusals().isEmpty()) {
            return new LoadOutcome(null, check.refusals());
          }
          Load after = load;
          for (Map.Entry<Indicator, Indicator.Result> one : results.entrySet()) {
            LoadEvent event =
                new LoadEvent(now(), by, LoadEvent.What.READ, one.getKey(), one.getValue(), "");
            after = after.after(load.state(), event);
          }
          return written(
              after.atVersion(version + 1), new Moves("", now(), DrawerEntry.What.LOADED));
        });
  }

  /** Releases a load: what is still in it becomes clean. */
  public LoadOutcome release(UUID id, int version, String by) {
    return inTurn(
        () -> {
          Load load = loads.find(id).orElse(null);
          SettingValues set = settings.read();
          LoadCheck check = new LoadCheck(drawer, set);
          check.releaser(by, ReprocessingSetting.of(set));
          if (check.is(load, version)) {
            check.releasable(load, now());
            check.doubt(load == null ? Optional.empty() : reach.doubtOf(load));
          }
          if (load == null || !check.refusals().isEmpty()) {
            return new LoadOutcome(null, check.refusals());
          }
          Moves moves = new Moves(load.name(), now(), DrawerEntry.What.RELEASED);
          for (StockItem item : reach.stillIn(load)) {
            moves.to(item, InstrumentState.CLEAN);
          }
          LoadEvent event = new LoadEvent(now(), by, LoadEvent.What.RELEASED, null, null, "");
          return written(load.after(Load.State.RELEASED, event), moves);
        });
  }

  /** The lock of a steriliser; empty where it is in service. */
  public Optional<SteriliserLock> lock(String steriliser) {
    return SteriliserLock.of(loads, steriliser);
  }

  /** Returns a steriliser to service after the repeat tests of its failed spore test passed. */
  public LoadOutcome returnToService(UUID failed, String by, String note) {
    return inTurn(
        () -> {
          Load load = loads.find(failed).orElse(null);
          SettingValues set = settings.read();
          LoadCheck check = new LoadCheck(drawer, set);
          check.releaser(by, ReprocessingSetting.of(set));
          if (load == null) {
            return new LoadOutcome(null, List.of(LoadRefusal.of(LoadRefusal.Kind.UNKNOWN_LOAD)));
          }
          Optional<SteriliserLock> lock = lock(load.steriliser());
          check.mayReturn(lock, load);
          if (lock.isEmpty() || !check.refusals().isEmpty()) {
            return new LoadOutcome(null, check.refusals());
          }
          LoadOutcome outcome = new LoadOutcome(load, List.of());
          for (Load one : lock.get().failed()) {
            LoadEvent event =
                new LoadEvent(now(), by, LoadEvent.What.RETURNED, null, null, note.strip());
            outcome =
                written(
                    one.after(one.state(), event), new Moves("", now(), DrawerEntry.What.LOADED));
          }
          return outcome;
        });
  }

  /**
   * Fails a load, released or not: what was not used goes to quarantine. Whatever happened to it
   * meanwhile, a load that someone fails is failed.
   */
  public LoadOutcome fail(UUID id, String by, String reason) {
    return inTurn(
        () -> {
          Load load = loads.find(id).orElse(null);
          LoadCheck check = new LoadCheck(drawer, settings.read());
          check.person(by);
          check.failable(load, reason);
          if (load == null || !check.refusals().isEmpty()) {
            return new LoadOutcome(null, check.refusals());
          }
          Moves moves = new Moves(load.name(), now(), DrawerEntry.What.RECALLED);
          for (StockItem item : reach.held(load)) {
            if (item.state() != InstrumentState.QUARANTINE) {
              moves.to(item, InstrumentState.QUARANTINE);
            }
          }
          LoadEvent event =
              new LoadEvent(now(), by, LoadEvent.What.FAILED, null, null, reason.strip());
          return written(load.after(Load.State.FAILED, event), moves);
        });
  }

  /** What a failed load reaches, or would reach if it failed now. */
  public Recall recall(Load load) {
    return reach.of(load);
  }

  private LoadOutcome written(Load load, Moves moves) throws LoadConflict, DrawerConflict {
    loads.write(load, moves.lines);
    return new LoadOutcome(load, List.of());
  }

  private interface Attempt {
    LoadOutcome run() throws LoadConflict, DrawerConflict;
  }

  /** What stands in the way is seen before anything is written. */
  private LoadOutcome inTurn(Attempt attempt) {
    return drawer.inTurn(
        () -> {
          try {
            return attempt.run();
          } catch (LoadConflict | DrawerConflict never) {
            throw new IllegalStateException("Somebody wrote out of turn", never);
          }
        });
  }

  /** The lines of the drawer that go with a change of a load. */
  private final class Moves {
    private final UUID batch = ids.next();
    private final List<DrawerEntry> lines = new ArrayList<>();
    private final String note;
    private final Instant at;
    private final DrawerEntry.What what;

    Moves(String note, Instant at, DrawerEntry.What what) {
      this.note = note;
      this.at = at;
      this.what = what;
    }

    void to(StockItem item, InstrumentState state) {
      StockItem after =
          item.next(
              draft -> {
                draft.state = state;
                draft.sterilisations += state == InstrumentState.CLEAN ? 1 : 0;
              });
      lines.add(new DrawerEntry(ids.next(), batch, at, what, note, item, after, null));
    }
  }
}
