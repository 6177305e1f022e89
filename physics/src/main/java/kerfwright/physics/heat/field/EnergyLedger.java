package kerfwright.physics.heat.field;

/** Running sums of the heat that passed each border of the body, per radian. */
final class EnergyLedger {
  private double cut;
  private double washed;
  private double faces;
  private double removed;
  private double turnover;

  void along(DepthSweep depth, double[][] t, double seconds) {
    cut(depth.cutInflow() * seconds);
    washed(depth.washedInflow(t) * seconds);
    faces(depth.bottomInflow(t) * seconds);
  }

  void along(RadialSweep radial, double[][] t, double seconds) {
    washed(radial.wallInflow(t) * seconds);
    faces(radial.sideInflow(t) * seconds);
  }

  /** Heat that blood brought to the tissue at the bottom. */
  void blood(double heat) {
    faces(heat);
  }

  private void cut(double heat) {
    cut += heat;
    turnover += Math.abs(heat);
  }

  private void washed(double heat) {
    washed += heat;
    turnover += Math.abs(heat);
  }

  private void faces(double heat) {
    faces += heat;
    turnover += Math.abs(heat);
  }

  void removed(double heat) {
    removed += heat;
    turnover += Math.abs(heat);
  }

  EnergyBalance close(double storedPerRadian) {
    double round = 2 * Math.PI;
    return new EnergyBalance(
        storedPerRadian * round,
        cut * round,
        washed * round,
        faces * round,
        removed * round,
        turnover * round);
  }
}
