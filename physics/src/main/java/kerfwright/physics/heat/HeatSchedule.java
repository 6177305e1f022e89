package kerfwright.physics.heat;

import java.util.List;
import kerfwright.quantity.Check;

/**
 * The work on one round spot: stretches one after the other, the floor going on where it stood.
 *
 * @param spotRadiusMm radius of the spot and of the cavity that grows from it
 * @param stretches what is done, in order
 */
public record HeatSchedule(double spotRadiusMm, List<HeatStretch> stretches) {
  public HeatSchedule {
    Check.positive("Radius of the spot", "mm", spotRadiusMm);
    stretches = List.copyOf(stretches);
    if (stretches.isEmpty()) {
      throw new IllegalArgumentException("A schedule needs at least one stretch");
    }
  }

  public double durationS() {
    double sum = 0;
    for (HeatStretch stretch : stretches) {
      sum += stretch.durationS();
    }
    return sum;
  }

  /** Depth of the cavity at the end. */
  public double cutDepthMm() {
    double sum = 0;
    for (HeatStretch stretch : stretches) {
      sum += stretch.cutDepthMm();
    }
    return sum;
  }
}
