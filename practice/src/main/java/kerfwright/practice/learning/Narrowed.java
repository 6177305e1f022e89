package kerfwright.practice.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.evidence.Family;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.OwnPace.Factor;
import org.jspecify.annotations.Nullable;

/**
 * The band of a time before the practice's own cuts and after.
 *
 * @param family which instruments
 * @param where the material and kind; null for all that was not cut yet
 * @param before by the literature alone, as a factor on its time
 * @param after with the own cuts; null where they tell nothing of it
 * @param cuts how many they are
 */
public record Narrowed(
    Family family, OwnPace.@Nullable Where where, Factor before, @Nullable Factor after, int cuts) {

  /** Every material and kind that was cut, and what is left of each family. */
  public static List<Narrowed> of(OwnPace pace, Map<OwnPace.Where, Integer> counts) {
    List<Narrowed> all = new ArrayList<>();
    for (Family family : List.of(Family.ABRASIVE_RATE, Family.BLADE_RATE)) {
      Factor before = PaceLearning.before(family);
      counts.forEach(
          (where, cuts) -> {
            if (PaceLearning.family(where) == family) {
              all.add(
                  new Narrowed(
                      family, where, before, pace.time(where.materialId(), where.kind()), cuts));
            }
          });
      all.add(new Narrowed(family, null, before, pace.families().get(family), 0));
    }
    return all;
  }
}
