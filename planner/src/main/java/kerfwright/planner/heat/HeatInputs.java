package kerfwright.planner.heat;

/**
 * The uncertain inputs of the heat at the pulp wall.
 *
 * <p>Heat share: no measured value for dental instruments was found; grinding theory bounds it from
 * below at about 0.02 for diamond and 0.2 for carbide with a cool tool. One value for all, with a
 * factor of two each way, is fitted to the published rises of the calibration sources by committed
 * code (docs/FITS.md). The fit takes load and time of contact as told or assumed, so that the share
 * stands for these too. Spray: 2000 to 5000 W/(m2 K) wet, 10 to 50 dry (proposal of the literature
 * survey, none measured on teeth); half of it reaches the face under the instrument (project
 * setting).
 *
 * @param heatShare share of the contact power that enters the tooth
 * @param sprayAt50MlWPerM2K heat transfer coefficient at 50 mL/min
 * @param waterC temperature of the water
 * @param bodyC temperature of the tooth at the start
 */
public record HeatInputs(double heatShare, double sprayAt50MlWPerM2K, double waterC, double bodyC) {
  /** Typical values. */
  public static final HeatInputs TYPICAL = new HeatInputs(0.04, 3000, 25, 36);

  private static final double AIR_W_PER_M2K = 15;
  private static final double HALF_FLOW_ML_PER_MIN = 25;
  private static final double UNDER_INSTRUMENT = 0.5;

  /** The same with the share and the spray times a factor. */
  public HeatInputs times(double shareFactor, double sprayFactor) {
    return new HeatInputs(heatShare * shareFactor, sprayAt50MlWPerM2K * sprayFactor, waterC, bodyC);
  }

  /** Coefficient at a flow; rises less and less with flow (form ours). */
  public double sprayWPerM2K(double flowMlPerMin) {
    double share = flowMlPerMin / (flowMlPerMin + HALF_FLOW_ML_PER_MIN);
    double shareAt50 = 50 / (50 + HALF_FLOW_ML_PER_MIN);
    return AIR_W_PER_M2K + sprayAt50MlWPerM2K * share / shareAt50;
  }

  /** Coefficient under the instrument while it cuts. */
  public double underInstrumentWPerM2K(double flowMlPerMin) {
    return UNDER_INSTRUMENT * sprayWPerM2K(flowMlPerMin);
  }

  public double airWPerM2K() {
    return AIR_W_PER_M2K;
  }
}
