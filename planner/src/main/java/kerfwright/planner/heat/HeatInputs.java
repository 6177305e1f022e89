package kerfwright.planner.heat;

import java.util.function.ToDoubleFunction;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.WettedContact;

/**
 * The uncertain inputs of the heat at the pulp wall; {@link #TYPICAL} is a living tooth.
 *
 * <p>Heat share: no measured value for dental instruments was found; grinding theory bounds it from
 * below at about 0.02 for diamond and 0.2 for carbide with a cool tool. One value for all, with a
 * factor of two each way, is fitted to the dry rises of the calibration sources by committed code
 * (docs/FITS.md). The fit takes load and time of contact as told or assumed, so that the share
 * stands for these too. Under a wetted contact less enters, see {@link WettedContact}. Spray: 2000
 * to 5000 W/(m2 K) wet, 10 to 50 dry (proposal of the literature survey, none measured on teeth),
 * within that moved towards what the calibration sources ask for; half of it reaches the face under
 * the instrument (project setting).
 *
 * @param heatShare share of the power of a dry contact that enters the tooth
 * @param sprayAt50MlWPerM2K heat transfer coefficient at 50 mL/min
 * @param waterC temperature of the water
 * @param bodyC temperature of the tooth at the start, and of its blood
 * @param perfusionMlPerMinG blood flow of the pulp; 0 on the bench
 * @param contact when water leaves the contact
 * @param confinedShare share of the power of a dry drill in its own hole that enters the tooth
 * @param rootPerfusionMlPerMinG blood flow round the root
 * @param handMPerS speed of the hand over the surface
 */
public record HeatInputs(
    double heatShare,
    double sprayAt50MlWPerM2K,
    double waterC,
    double bodyC,
    double perfusionMlPerMinG,
    WettedContact contact,
    double confinedShare,
    double rootPerfusionMlPerMinG,
    double handMPerS) {
  /** Typical values. */
  public static final HeatInputs TYPICAL = of(0.033, 4000, 25, HeatParameter::typical);

  /** 15 over the top and as much over the sides of a crown, which are twice the top. */
  private static final double AIR_W_PER_M2K = 45;

  private static final double HALF_FLOW_ML_PER_MIN = 25;
  private static final double UNDER_INSTRUMENT = 0.5;

  /** Inputs with every {@link HeatParameter} at a value of the caller's. */
  public static HeatInputs of(
      double heatShare, double spray, double waterC, ToDoubleFunction<HeatParameter> value) {
    return new HeatInputs(
        heatShare,
        spray,
        waterC,
        value.applyAsDouble(HeatParameter.START),
        value.applyAsDouble(HeatParameter.PERFUSION),
        new WettedContact(
            value.applyAsDouble(HeatParameter.FLUX_LIMIT),
            value.applyAsDouble(HeatParameter.REACHING_SHARE)),
        value.applyAsDouble(HeatParameter.CONFINED_SHARE),
        value.applyAsDouble(HeatParameter.ROOT_PERFUSION),
        value.applyAsDouble(HeatParameter.HAND));
  }

  /** The typical ones with a factor on share and spray and the caller's parameters. */
  public static HeatInputs drawn(
      double shareFactor, double sprayFactor, ToDoubleFunction<HeatParameter> value) {
    return of(
        TYPICAL.heatShare * shareFactor,
        TYPICAL.sprayAt50MlWPerM2K * sprayFactor,
        TYPICAL.waterC,
        value);
  }

  /** The same tooth and water as they were in a test: told temperatures, told or no blood. */
  public HeatInputs asTested(double testWaterC, double startC, double bloodMlPerMinG) {
    return new HeatInputs(
        heatShare,
        sprayAt50MlWPerM2K,
        testWaterC,
        startC,
        bloodMlPerMinG,
        contact,
        confinedShare,
        rootPerfusionMlPerMinG,
        handMPerS);
  }

  /** Coefficient at a flow; rises less and less with flow (form ours). */
  public double sprayWPerM2K(double flowMlPerMin) {
    double share = flowMlPerMin / (flowMlPerMin + HALF_FLOW_ML_PER_MIN);
    double shareAt50 = 50 / (50 + HALF_FLOW_ML_PER_MIN);
    return AIR_W_PER_M2K + sprayAt50MlWPerM2K * share / shareAt50;
  }

  /** How far water wets the contact of a cut. */
  public double wettedShare(CutHeat cut, double flowMlPerMin) {
    return contact.wettedShare(cut.powerW(), cut.contactMm2() * 1e-6, flowMlPerMin, waterC);
  }

  /** Coefficient under the instrument while it cuts; that of air as far as the contact is dry. */
  private double underInstrumentWPerM2K(double flowMlPerMin, double wettedShare) {
    return AIR_W_PER_M2K
        + wettedShare * (UNDER_INSTRUMENT * sprayWPerM2K(flowMlPerMin) - AIR_W_PER_M2K);
  }

  /** Power that enters the tooth from a cut. */
  public double enteringW(CutHeat cut, double wettedShare) {
    return entering(heatShare, cut, wettedShare);
  }

  /** The same where the instrument turns in its own hole. */
  public double enteringConfinedW(CutHeat cut, double wettedShare) {
    return entering(confinedShare, cut, wettedShare);
  }

  private static double entering(double share, CutHeat cut, double wettedShare) {
    return share * cut.powerW() * WettedContact.heatShare(wettedShare);
  }

  /**
   * Air over a tooth that was at rest in it: it takes what is warmer than at the start, for at the
   * start the two were in balance.
   */
  public Coolant air() {
    return new Coolant(AIR_W_PER_M2K, bodyC);
  }

  /**
   * What flows over the tooth while the instrument is at work: spray, or air where there is none.
   */
  public Coolant spray(double flowMlPerMin) {
    return flowMlPerMin > 0 ? new Coolant(sprayWPerM2K(flowMlPerMin), waterC) : air();
  }

  /** What flows over the floor under the instrument. */
  public Coolant under(CutHeat cut, double flowMlPerMin) {
    return flowMlPerMin > 0
        ? new Coolant(underInstrumentWPerM2K(flowMlPerMin, wettedShare(cut, flowMlPerMin)), waterC)
        : air();
  }
}
