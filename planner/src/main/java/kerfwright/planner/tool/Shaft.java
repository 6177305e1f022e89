package kerfwright.planner.tool;

import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.catalogue.silhouette.SilhouetteSettings;
import kerfwright.physics.shaft.NeckStress;
import kerfwright.physics.shaft.OverhungShaft;
import kerfwright.quantity.RotationalSpeed;

/**
 * The overhung part of an instrument: whirl limit, stiffness, neck stress, reach.
 *
 * <p>The number does not tell the neck: its diameter follows {@link SilhouetteSettings}, the rule
 * the drawings use, its length is 3 mm or what the overhang leaves (project settings); what a right
 * angle instrument is longer than 22 mm goes into its neck, as in long burs made to reach a chamber
 * (common practice). Refused above 0.75 of the first whirl speed (common practice, 0.7 to 0.8) and
 * above a quarter, at the neck, of the lowest flexural strength of cemented carbide strips, 1620
 * MPa (SAMPE J 2016, table 1), for reversed bending and the fillet (project setting).
 *
 * @param model the stepped cantilever
 * @param leverM from the neck's root to the middle of the head
 * @param neckLengthM length of the neck
 * @param neckDiameterM diameter of the neck
 */
public record Shaft(OverhungShaft model, double leverM, double neckLengthM, double neckDiameterM) {
  public static final double WHIRL_SHARE = 0.75;
  public static final double NECK_LIMIT_PA =
      SafetyLimits.packaged().carbideFlexuralStrength().pascals() / 4;
  private static final double NECK_M = 3e-3;
  private static final double USUAL_RA_M = 22e-3;
  private static final double STEEL_E_PA = 200e9;
  private static final double STEEL_DENSITY = 7850;
  private static final double CARBIDE_DENSITY = 14900;

  /** The shaft of an instrument. */
  public static Shaft of(InstrumentProperties instrument) {
    double shank = instrument.shank().diameter().metres();
    double head = instrument.headDiameter().metres();
    double headLength = Math.min(instrument.headLength().metres(), instrument.overhang().metres());
    double neckDiameter = SilhouetteSettings.PROJECT.neckDiameterMm(head * 1e3, shank * 1e3) * 1e-3;
    double free = Math.max(0, instrument.overhang().metres() - headLength);
    double longer =
        instrument.shank() == ShankType.RA
            ? Math.max(0, instrument.overallLength().metres() - USUAL_RA_M)
            : 0;
    double neck = Math.max(0.1e-3, Math.min(NECK_M + longer, free) + headLength / 2);
    double shankOut = Math.max(0, instrument.overhang().metres() - headLength / 2 - neck);
    double density = instrument.kind() == InstrumentKind.CARBIDE ? CARBIDE_DENSITY : STEEL_DENSITY;
    double mass = density * Math.PI / 4 * head * head * headLength * 0.7;
    return new Shaft(
        new OverhungShaft(shankOut, shank, neck, neckDiameter, mass, STEEL_E_PA, STEEL_DENSITY),
        neck,
        neck - headLength / 2,
        neckDiameter);
  }

  /** Highest speed allowed by whirl. */
  public RotationalSpeed whirlLimit() {
    return new RotationalSpeed(WHIRL_SHARE * model.firstWhirlPerS());
  }

  /** Stress at the neck under a load on the head, Pa. */
  public double neckStressPa(double loadN, double torqueNM) {
    return NeckStress.equivalentPa(loadN, leverM, torqueNM, neckDiameterM);
  }
}
