package kerfwright.planner.sequence;

import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.Shaft;
import kerfwright.quantity.RotationalSpeed;

/** Limits that always hold; no setting switches them off. */
final class HardLimits {
  private static final double THIN_WALL_M = 0.05e-3;

  private HardLimits() {}

  /** Whether an instrument may be planned with at all, whatever the handpiece. */
  static Optional<Exclusion> ofInstrument(Instrument instrument, Outline outline, double depthM) {
    DrawerInstrument d = instrument.drawer();
    if (d.state() != DrawerInstrument.State.CLEAN) {
      return no("not-clean", "is " + d.state().id() + ", not clean");
    }
    if (instrument.properties().maximumSpeed() == null) {
      return no("maximum-speed-unknown", "has no maximum speed in the drawer list");
    }
    if (instrument.wornOut()) {
      return no("worn-out", "has less than a third of its sharpness left");
    }
    double head = instrument.properties().headDiameter().metres();
    double width = outline.width().metres();
    if (outline.shape().walled() && head > width - THIN_WALL_M) {
      return no(
          "head-too-wide",
          String.format(
              Locale.ROOT,
              "has a head of %.1f mm, the opening is %.1f mm wide",
              head * 1e3,
              width * 1e3));
    }
    double reach = instrument.reachM(outline.shape().walled() ? width : Double.MAX_VALUE);
    if (outline.shape().walled() && reach < depthM) {
      return no(
          "too-short",
          String.format(
              Locale.ROOT, "reaches %.1f mm, %.1f mm are needed", reach * 1e3, depthM * 1e3));
    }
    return Optional.empty();
  }

  /** Whether the shank fits the handpiece. */
  static boolean fits(Instrument instrument, Handpiece handpiece) {
    return instrument.properties().shank() == handpiece.shank();
  }

  /** The highest speed that may be set: maker's limit, handpiece, whirl. */
  static double highestRpm(Instrument instrument, Handpiece handpiece) {
    RotationalSpeed maker = instrument.properties().maximumSpeed();
    double makerRpm = maker == null ? 0 : maker.rpm();
    return Math.min(
        Math.min(makerRpm, handpiece.drive().freeSpeed().rpm()),
        instrument.shaft().whirlLimit().rpm());
  }

  /** Whether the neck stands the load. */
  static boolean neckHolds(Instrument instrument, double loadN, double torqueNM) {
    return instrument.shaft().neckStressPa(loadN, torqueNM) <= Shaft.NECK_LIMIT_PA;
  }

  private static Optional<Exclusion> no(String code, String text) {
    return Optional.of(new Exclusion(code, text));
  }
}
