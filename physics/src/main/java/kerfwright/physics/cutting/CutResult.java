package kerfwright.physics.cutting;

/**
 * What a working part does at one operating point.
 *
 * @param removalM3PerS removal rate
 * @param tangentialN force along the rim
 * @param powerW mechanical power at the contact; all of it becomes heat
 * @param brittleShare share of the load that cracks rather than flows, 0 to 1
 * @param unitLoadN load on one active grain, or on one millimetre of edge for blades
 * @param chipThicknessM mean depth a grain or blade bites
 * @param cleanShare share left after chips have loaded the working part, 0 to 1
 * @param chipShare share of the edge's work that lifts a chip instead of ploughing, 0 to 1
 * @param steadyShare share of the rate that does not fall as the working part dulls, 0 to 1
 */
public record CutResult(
    double removalM3PerS,
    double tangentialN,
    double powerW,
    double brittleShare,
    double unitLoadN,
    double chipThicknessM,
    double cleanShare,
    double chipShare,
    double steadyShare) {
  /** Energy spent on a volume, J/m3; infinite where nothing is removed. */
  public double specificEnergyJPerM3() {
    return removalM3PerS > 0 ? powerW / removalM3PerS : Double.POSITIVE_INFINITY;
  }
}
