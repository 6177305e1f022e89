package kerfwright.app.learner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final Map<String, Lesson> known = Collections.synchronizedMap(new LinkedHashMap<>());

  /** A case, open to choices. */
  record Lesson(CutCase cutCase, DrawerSnapshot drawer, WhatHappens happens) {}

  LessonCases(Wiring.Source<List<CutCase>> cases, Wiring.Source<DrawerSnapshot> drawer) {
    this.cases = cases;
    this.drawer = drawer;
  }

  List<CutCase> all() {
    try {
      return cases.read();
    } catch (BadInput packaged) {
      throw new IllegalStateException("The packaged cases cannot be read", packaged);
    }
  }

  /** A case by its reference; planned when it is first asked for. */
  Optional<Lesson> find(String reference) {
    Lesson before = known.get(reference);
    if (before != null) {
      return Optional.of(before);
    }
    Optional<Lesson> made =
        all().stream()
            .filter(one -> one.reference().equals(reference))
            .findFirst()
            .flatMap(this::opened);
    made.ifPresent(lesson -> known.put(reference, lesson));
    return made;
  }

  private Optional<Lesson> opened(CutCase one) {
    DrawerSnapshot stock = stock();
    return WhatHappens.of(one, stock, OPTIONS).map(happens -> new Lesson(one, stock, happens));
  }

  private DrawerSnapshot stock() {
    try {
      List<DrawerInstrument> all = new ArrayList<>(drawer.read().instruments());
      all.removeIf(one -> one.state() != DrawerInstrument.State.CLEAN);
      all.add(
          new DrawerInstrument(
              MANY_BLADES,
              InstrumentResolver.resolve(new DrawerFields(ROUND_OF_TWELVE)).orThrow(),
              0,
              0,
              DrawerInstrument.State.CLEAN));
      return new DrawerSnapshot(all);
    } catch (BadInput packaged) {
      throw new IllegalStateException("The packaged drawer cannot be read", packaged);
    }
  }
}
