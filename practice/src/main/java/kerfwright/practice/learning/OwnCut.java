package kerfwright.practice.learning;

import java.util.List;
import java.util.UUID;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.uncertainty.SlotCut;
import org.jspecify.annotations.Nullable;

/**
 * Slots the practice cut into a block against the clock, all alike.
 *
 * @param item the instrument, as kept in the drawer
 * @param uses its uses before them
 * @param sterilisations its sterilisations before them
 * @param handpieceId what drove it
 * @param materialId the block
 * @param loadN load across the instrument, weighed
 * @param waterMlPerMin water, caught in a cup
 * @param engagedMm length of the head in the block
 * @param seconds time of each slot
 * @param depthsMm depth of each slot
 * @param stallN load at which the handpiece was heard to stall; null where nobody listened
 */
public record OwnCut(
    UUID item,
    int uses,
    int sterilisations,
    String handpieceId,
    String materialId,
    double loadN,
    double waterMlPerMin,
    double engagedMm,
    double seconds,
    List<Double> depthsMm,
    @Nullable Double stallN) {
  public OwnCut {
    depthsMm = List.copyOf(depthsMm);
    boolean sound =
        within(loadN, 0.04, 10)
            && within(waterMlPerMin, 0, 300)
            && within(engagedMm, 0.2, 20)
            && within(seconds, 1, 600)
            && !depthsMm.isEmpty()
            && depthsMm.stream().allMatch(d -> within(d, 0.01, 30))
            && (stallN == null || within(stallN, 0.04, 30));
    if (!sound || uses < 0 || sterilisations < 0) {
      throw new IllegalArgumentException(
          "a cut out of all bounds: "
              + loadN
              + " N, "
              + waterMlPerMin
              + " mL/min, "
              + engagedMm
              + " mm, "
              + seconds
              + " s, depths "
              + depthsMm);
    }
  }

  /** Between two bounds, both included. */
  public static boolean within(double value, double low, double high) {
    return value >= low && value <= high;
  }

  /** Each slot against what the models say of it; empty where they say it stalls. */
  public List<LoggedCut> against(SlotCut models) {
    OwnPace.Where where = new OwnPace.Where(materialId, models.instrument().properties().kind());
    return depthsMm.stream()
        .map(models::seconds)
        .filter(Double::isFinite)
        // wear before is in the sharpness the models reckon with
        .map(literature -> new LoggedCut(where, literature, seconds, 0, true))
        .toList();
  }
}
