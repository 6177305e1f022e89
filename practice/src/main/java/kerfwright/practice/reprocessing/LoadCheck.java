package kerfwright.practice.reprocessing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.catalogue.piece.PieceKind;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.SettingValues;
import org.jspecify.annotations.Nullable;

/** Gathers every reason against a change of a load. */
final class LoadCheck {
  private final Drawer drawer;
  private final SettingValues set;
  private final List<LoadRefusal> refusals = new ArrayList<>();

  LoadCheck(Drawer drawer, SettingValues set) {
    this.drawer = drawer;
    this.set = set;
  }

  List<LoadRefusal> refusals() {
    return refusals;
  }

  private void against(LoadRefusal.Kind kind, String... arguments) {
    refusals.add(LoadRefusal.of(kind, arguments));
  }

  void person(String by) {
    if (Person.find(set, by).isEmpty()) {
      against(LoadRefusal.Kind.UNKNOWN_PERSON, by);
    }
  }

  void releaser(String by, ReprocessingSetting own) {
    Optional<Person> person = Person.find(set, by);
    if (person.isEmpty()) {
      against(LoadRefusal.Kind.UNKNOWN_PERSON, by);
    } else if (!own.mayRelease().contains(person.get().role())) {
      against(LoadRefusal.Kind.MAY_NOT_RELEASE, by);
    }
  }

  void cycle(Cycle cycle, ReprocessingSetting own) {
    if (cycle.type() == Cycle.Type.N) {
      against(LoadRefusal.Kind.CYCLE_UNWRAPPED_ONLY);
    } else if (cycle.type() == Cycle.Type.S && !own.wrappedInS()) {
      against(LoadRefusal.Kind.CYCLE_S_NOT_STATED);
    }
  }

  void steriliser(String name, ReprocessingSetting own, List<Load> running, Instant now) {
    if (!own.sterilisers().contains(name)) {
      against(LoadRefusal.Kind.UNKNOWN_STERILISER, name);
    }
    for (Load load : running) {
      if (load.steriliser().equals(name) && load.over().isAfter(now)) {
        against(LoadRefusal.Kind.STERILISER_BUSY, name, load.name());
      }
    }
  }

  /** Out of service it takes nothing but a test of the empty chamber. */
  void inService(Optional<SteriliserLock> lock, boolean empty) {
    if (lock.isPresent() && !empty) {
      Load failed = lock.get().load();
      against(LoadRefusal.Kind.STERILISER_LOCKED, failed.steriliser(), failed.name());
    } else if (lock.isEmpty() && empty) {
      against(LoadRefusal.Kind.EMPTY);
    }
  }

  void doubt(Optional<Load> failed) {
    failed.ifPresent(one -> against(LoadRefusal.Kind.IN_QUESTION, one.name()));
  }

  void mayReturn(Optional<SteriliserLock> lock, Load load) {
    if (lock.isEmpty() || lock.get().failed().stream().noneMatch(o -> o.id().equals(load.id()))) {
      against(LoadRefusal.Kind.DECIDED, load.state().id());
    } else if (!lock.get().mayReturn()) {
      against(
          LoadRefusal.Kind.TESTS_MISSING,
          Integer.toString(lock.get().passed()),
          Integer.toString(lock.get().needed()));
    }
  }

  /** The instruments of every pouch. */
  List<List<StockItem>> contents(List<NewLoad.Packed> pouches) {
    List<List<StockItem>> all = new ArrayList<>();
    Set<UUID> seen = new HashSet<>();
    for (NewLoad.Packed pouch : pouches) {
      List<StockItem> items = new ArrayList<>();
      for (Pick pick : pouch.contents()) {
        content(pick, seen).ifPresent(items::add);
      }
      if (pouch.contents().isEmpty()) {
        against(LoadRefusal.Kind.EMPTY);
      }
      all.add(items);
    }
    return all;
  }

  /** What is hollow is only known to be reached by a B cycle. */
  void hollow(Cycle cycle, List<List<StockItem>> contents) {
    if (cycle.type() != Cycle.Type.B) {
      contents.stream()
          .flatMap(List::stream)
          .filter(item -> item.pieceKind().filter(PieceKind::hollow).isPresent())
          .forEach(item -> against(LoadRefusal.Kind.HOLLOW_NEEDS_B, item.label()));
    }
  }

  private Optional<StockItem> content(Pick pick, Set<UUID> seen) {
    Optional<StockItem> found = drawer.find(pick.item()).filter(one -> !one.removed());
    if (found.isEmpty()) {
      against(LoadRefusal.Kind.UNKNOWN_INSTRUMENT, pick.item().toString());
      return found;
    }
    StockItem item = found.get();
    if (!seen.add(item.id())) {
      against(LoadRefusal.Kind.TWICE, item.label());
    } else if (item.singleUse()) {
      against(LoadRefusal.Kind.SINGLE_USE, item.label());
    } else if (item.state() != InstrumentState.CLEANING) {
      against(LoadRefusal.Kind.NOT_CLEANED, item.label(), item.state().id());
    } else if (item.version() != pick.version()) {
      against(LoadRefusal.Kind.MEANWHILE);
    }
    return found;
  }

  /** False where it is not there or no longer as it was seen. */
  boolean is(@Nullable Load load, int version) {
    if (load == null) {
      against(LoadRefusal.Kind.UNKNOWN_LOAD);
    } else if (load.version() != version) {
      against(LoadRefusal.Kind.MEANWHILE);
    }
    return load != null && load.version() == version;
  }

  void readable(@Nullable Load load, Map<Indicator, Indicator.Result> results, Instant now) {
    if (load == null || results.isEmpty()) {
      against(LoadRefusal.Kind.EMPTY);
      return;
    }
    boolean sporesAlone = results.keySet().equals(Set.of(Indicator.SPORES));
    if (load.state() == Load.State.FAILED || load.state() == Load.State.RELEASED && !sporesAlone) {
      against(LoadRefusal.Kind.DECIDED, load.state().id());
    }
    if (results.containsValue(Indicator.Result.PASSED)) {
      over(load, now);
    }
  }

  private void over(Load load, Instant now) {
    if (load.over().isAfter(now)) {
      long seconds = Duration.between(now, load.over()).toSeconds();
      against(LoadRefusal.Kind.STILL_RUNS, Long.toString((seconds + 59) / 60));
    }
  }

  void releasable(@Nullable Load load, Instant now) {
    if (load == null) {
      return;
    }
    if (load.state() != Load.State.RUNNING) {
      against(LoadRefusal.Kind.DECIDED, load.state().id());
      return;
    }
    over(load, now);
    load.readings()
        .forEach(
            (indicator, result) -> {
              if (result == Indicator.Result.FAILED) {
                against(LoadRefusal.Kind.INDICATOR_FAILED, indicator.id());
              } else if (result == Indicator.Result.NOT_READ && indicator.everyLoad()) {
                against(LoadRefusal.Kind.NOT_READ, indicator.id());
              }
            });
  }

  void failable(@Nullable Load load, String reason) {
    if (load == null) {
      against(LoadRefusal.Kind.UNKNOWN_LOAD);
    } else if (load.state() == Load.State.FAILED) {
      against(LoadRefusal.Kind.DECIDED, load.state().id());
    }
    if (reason.isBlank()) {
      against(LoadRefusal.Kind.NO_REASON);
    }
  }
}
