package kerfwright.planner.sequence;

import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.Shaft;
import kerfwright.quantity.Message;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Rounded;

/** Limits that always hold; no setting switches them off. */
final class HardLimits {
  private static final double THIN_WALL_M = 0.05e-3;

  private HardLimits() {}

  /** Whether an instrument may be planned with at all, whatever the handpiece. */
  static Optional<Exclusion> ofInstrument(Instrument instrument, Outline outline, double depthM) {
    DrawerInstrument d = instrument.drawer();
    if (d.state() != DrawerInstrument.State.CLEAN) {
      return no("not-clean", Message.of("finding.state-" + d.state().id()));
    }
    if (instrument.properties().maximumSpeed() == null) {
      return no("maximum-speed-unknown");
    }
    if (instrument.wornOut()) {
      return no("worn-out");
    }
    double head = instrument.properties().headDiameter().metres();
    double width = outline.width().metres();
    if (outline.shape().walled() && head > width - THIN_WALL_M) {
      return no("head-too-wide", Rounded.places(head * 1e3, 1), Rounded.places(width * 1e3, 1));
    }
    double reach = instrument.reachM(outline.shape().walled() ? width : Double.MAX_VALUE);
    if (outline.shape().walled() && reach < depthM) {
      return no("too-short", Rounded.places(reach * 1e3, 1), Rounded.places(depthM * 1e3, 1));
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

  private static Optional<Exclusion> no(String code, Object... values) {
    return Optional.of(Exclusion.of(code, values));
  }
}
