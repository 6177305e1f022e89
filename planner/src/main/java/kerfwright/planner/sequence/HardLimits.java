package kerfwright.planner.sequence;

import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.physics.cutting.TurbineDrive;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.operation.Work;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.Shaft;
import kerfwright.quantity.Message;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Rounded;

/** Limits that always hold; no setting switches them off. */
final class HardLimits {
  private static final double ROUNDING_M = 1e-6;

  private HardLimits() {}

  /** Whether an instrument may be planned with at all, whatever the operation and handpiece. */
  static Optional<Exclusion> ofInstrument(Instrument instrument) {
    DrawerInstrument d = instrument.drawer();
    if (d.state() != DrawerInstrument.State.CLEAN) {
      return no("not-clean", Message.of("finding.state-" + d.state().id()));
    }
    if (instrument.properties().maximumSpeed() == null) {
      return no("maximum-speed-unknown");
    }
    return instrument.wornOut() ? no("worn-out") : Optional.empty();
  }

  /** Whether it gets in and down as far as the operation goes. */
  static Optional<Exclusion> reaches(Instrument instrument, Work work, Outline outline) {
    boolean walled = outline.shape().walled();
    double reach = instrument.reachM(walled ? outline.width().metres() : Double.MAX_VALUE);
    return walled && reach < work.reachM() - ROUNDING_M
        ? no("too-short", Rounded.places(reach * 1e3, 1), Rounded.places(work.reachM() * 1e3, 1))
        : Optional.empty();
  }

  /** Whether the shank fits the handpiece. */
  static boolean fits(Instrument instrument, Handpiece handpiece) {
    return instrument.properties().shank() == handpiece.shank();
  }

  /**
   * A turbine is driven at full pedal, so what it turns must bear its free speed; empty where it
   * does.
   */
  static Optional<Exclusion> bearsTheTurbine(Instrument instrument, Handpiece handpiece) {
    double bears = bearsRpm(instrument);
    double free = handpiece.drive().freeSpeed().rpm();
    return handpiece.drive() instanceof TurbineDrive && bears < free
        ? no("below-free-speed", Rounded.places(bears, 0), Rounded.places(free, 0))
        : Optional.empty();
  }

  /** The highest speed that may be set: maker's limit, handpiece, whirl. */
  static double highestRpm(Instrument instrument, Handpiece handpiece) {
    return Math.min(bearsRpm(instrument), handpiece.drive().freeSpeed().rpm());
  }

  private static double bearsRpm(Instrument instrument) {
    RotationalSpeed maker = instrument.properties().maximumSpeed();
    return Math.min(maker == null ? 0 : maker.rpm(), instrument.shaft().whirlLimit().rpm());
  }

  /** Whether the neck stands the load. */
  static boolean neckHolds(Instrument instrument, double loadN, double torqueNM) {
    return instrument.shaft().neckStressPa(loadN, torqueNM) <= Shaft.NECK_LIMIT_PA;
  }

  private static Optional<Exclusion> no(String code, Object... values) {
    return Optional.of(Exclusion.of(code, values));
  }
}
