package kerfwright.planner.heat;

/** What is uncertain in the heat beside the fitted factors, each with its range. */
public enum HeatParameter {
  /**
   * Blood in a living pulp, mL/(min g): 0.4 in adult dogs (excerpt), less under an anaesthetic with
   * vasoconstrictor, none in an extracted tooth.
   */
  PERFUSION(0, 0.2, 1),

  /** Temperature of a living pulp at the start, degC: 34 to 35 isolated (excerpt), 37 at most. */
  START(34, 35, 37),

  /** Flux at which water leaves the contact, W/m2 (from memory). */
  FLUX_LIMIT(5e6, 8e6, 15e6),

  /** Share of the spray that reaches the contact (from memory). */
  REACHING_SHARE(0.05, 0.1, 0.4),

  /**
   * Share of the power of a dry drill in its own hole that enters the tooth: it touches nothing
   * else (project setting, set before it was held against any figure).
   */
  CONFINED_SHARE(0.4, 0.7, 1),

  /** Blood round a root, mL/(min g): 0.3 in gingiva (excerpt). */
  ROOT_PERFUSION(0.1, 0.3, 0.6),

  /** Speed of the hand over the surface, m/s (project setting). */
  HAND(0.002, 0.005, 0.010);

  private final double low;
  private final double typical;
  private final double high;

  HeatParameter(double low, double typical, double high) {
    this.low = low;
    this.typical = typical;
    this.high = high;
  }

  public double low() {
    return low;
  }

  public double typical() {
    return typical;
  }

  public double high() {
    return high;
  }
}
