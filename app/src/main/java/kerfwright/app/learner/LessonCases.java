package kerfwright.app.learner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import kerfwright.app.Wiring;
import kerfwright.app.input.BadInput;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.WhatHappens;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;

/**
 * The cases to choose in and the drawer to choose from: those of the invented practice, so that a
 * lesson is the same whatever the practice's own drawer holds.
 */
final class LessonCases {
  /** A round bur with twelve blades, which the drawer lacks for good reason. */
  static final String MANY_BLADES = "U01";

  private static final PlanOptions OPTIONS = new PlanOptions(32, 1);
  private static final Map<String, String> ROUND_OF_TWELVE =
      Map.of(
          "kind", "carbide", "shape", "round", "blades", "12", "head_mm", "1.4", "shank", "FG",
          "max_rpm", "400000");

  private final Wiring.Source<List<CutCase>> cases;
  private final Wiring.Source<DrawerSnapshot> drawer;
  private final Map<String, WhatHappens> known = new ConcurrentHashMap<>();

  LessonCases(Wiring.Source<List<CutCase>> cases, Wiring.Source<DrawerSnapshot> drawer) {
    this.cases = cases;
    this.drawer = drawer;
  }

  List<CutCase> all() {
    return packaged(cases);
  }

  /** A case by its reference, open to choices; planned when it is first asked for. */
  Optional<WhatHappens> find(String reference) {
    Optional<WhatHappens> found =
        Optional.ofNullable(known.get(reference))
            .or(
                () ->
                    all().stream()
                        .filter(one -> one.reference().equals(reference))
                        .findFirst()
                        .flatMap(one -> WhatHappens.of(one, stock(), OPTIONS)));
    found.ifPresent(lesson -> known.put(reference, lesson));
    return found;
  }

  private DrawerSnapshot stock() {
    List<DrawerInstrument> all = new ArrayList<>(packaged(drawer).instruments());
    all.removeIf(one -> one.state() != DrawerInstrument.State.CLEAN);
    var bur = InstrumentResolver.resolve(new DrawerFields(ROUND_OF_TWELVE)).orThrow();
    all.add(new DrawerInstrument(MANY_BLADES, bur, 0, 0, DrawerInstrument.State.CLEAN));
    return new DrawerSnapshot(all);
  }

  private static <T> T packaged(Wiring.Source<T> source) {
    try {
      return source.read();
    } catch (BadInput broken) {
      throw new IllegalStateException("The packaged practice cannot be read", broken);
    }
  }
}
