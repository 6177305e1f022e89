package kerfwright.planner.rule;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.SpeedClass;
import kerfwright.catalogue.operation.Task;
import kerfwright.catalogue.operation.Window;
import kerfwright.physics.cutting.TurbineDrive;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.LastResort;
import kerfwright.planner.operation.Work;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;

/**
 * What an operation allows of an instrument and a handpiece before any physics. With the window
 * open the kind, the grit, the blades and the speed are left to the models: that is how the plan
 * learns what they would have chosen outside it.
 */
public final class Windows {
  /** Nominal sizes are tenths of a millimetre. */
  private static final double ROUNDING_M = 0.0501e-3;

  private static final double FULL_SLOT = 0.85;

  private Windows() {}

  /** Why an instrument is not one for the operation, or nothing. */
  public static Optional<Exclusion> against(InstrumentProperties p, Work work, boolean open) {
    Window window = work.operation().window();
    Task task = work.operation().task();
    boolean elastic = p.kind() == InstrumentKind.POLISHER || p.kind() == InstrumentKind.DISC;
    if (task == Task.POLISH && !elastic) {
      return no("cuts-only");
    }
    if (elastic && task != Task.POLISH && task != Task.FINISH) {
      return no("polishes-only");
    }
    boolean family = family(p, work, p.headDiameter().metres()) != LastResort.NONE;
    if (!open && !family && !window.kinds().contains(p.kind())) {
      return no("kind-not-for-this", Message.of("label.kind-" + p.kind().id()));
    }
    if (!family && !window.forms().isEmpty() && !formFits(p, window)) {
      return no("form-not-for-this", Message.of("label.shape-" + p.shape().id()));
    }
    if (window.safeEnd() && !p.safeEnd() && p.shape() != ShapeFamily.ROUND) {
      return no("end-cuts");
    }
    if (!open && !family && !gritOrBladesFit(p, window)) {
      return p.kind().bladed() ? no("blades-not-for-this") : no("grit-not-for-this");
    }
    if (elastic && !window.abrasive().isEmpty() && !window.abrasive().equals(p.abrasive())) {
      return no("abrasive-not-for-this");
    }
    return size(p, work);
  }

  private static boolean formFits(InstrumentProperties p, Window window) {
    return window.forms().contains(p.shape())
        || p.safeEnd() && window.forms().contains(ShapeFamily.TAPER_SAFE_END);
  }

  private static boolean gritOrBladesFit(InstrumentProperties p, Window window) {
    if (p.kind().bladed()) {
      Integer blades = p.blades();
      int most = window.mostBlades() > 0 ? window.mostBlades() : Integer.MAX_VALUE;
      return blades != null && blades >= window.leastBlades() && blades <= most;
    }
    GritClass grit = p.grit();
    return grit != null && (window.grits().isEmpty() || window.grits().contains(grit));
  }

  private static Optional<Exclusion> size(InstrumentProperties p, Work work) {
    double head = p.headDiameter().metres();
    double most = Math.max(work.headMostM(), work.slotWidthM());
    if (head > most + ROUNDING_M) {
      return no("head-too-wide", Rounded.places(head * 1e3, 1), Rounded.places(most * 1e3, 1));
    }
    if (head < work.headLeastM() - ROUNDING_M) {
      double least = work.headLeastM() * 1e3;
      return no("head-too-small", Rounded.places(head * 1e3, 1), Rounded.places(least, 1));
    }
    return Optional.empty();
  }

  /** Why an instrument is a last resort for the operation, or that it is none. */
  public static LastResort resort(InstrumentProperties p, Work work) {
    double head = p.headDiameter().metres();
    LastResort family = family(p, work, head);
    if (family != LastResort.NONE) {
      return family;
    }
    boolean fills = work.slotWidthM() > 0 && head > FULL_SLOT * work.slotWidthM();
    return fills ? LastResort.HEAD_AS_WIDE_AS_SLOT : LastResort.NONE;
  }

  /** Ceramic wants diamond, metal wants blades; finishing leaves it to the window. */
  private static LastResort family(InstrumentProperties p, Work work, double headM) {
    Task task = work.operation().task();
    if (task == Task.FINISH || task == Task.POLISH) {
      return LastResort.NONE;
    }
    Material.Group group = work.material(headM).group();
    if (group == Material.Group.CERAMIC && p.kind() == InstrumentKind.CARBIDE) {
      return LastResort.BLADES_IN_CERAMIC;
    }
    return group == Material.Group.METAL && p.kind().isDiamond()
        ? LastResort.DIAMOND_IN_METAL
        : LastResort.NONE;
  }

  /** The class of a handpiece. */
  public static SpeedClass of(Handpiece handpiece) {
    if (handpiece.drive() instanceof TurbineDrive) {
      return SpeedClass.TURBINE;
    }
    return handpiece.shank() == ShankType.FG ? SpeedClass.SPEED_INCREASING : SpeedClass.LOW;
  }

  /** Why a handpiece is not one for the operation, or nothing. */
  public static Optional<Exclusion> against(Handpiece handpiece, Work work, boolean open) {
    List<SpeedClass> speeds = work.operation().operating().speeds();
    return open || speeds.isEmpty() || speeds.contains(of(handpiece))
        ? Optional.empty()
        : no("handpiece-not-for-this", Message.of("label.handpiece-" + handpiece.id()));
  }

  private static Optional<Exclusion> no(String code, Object... values) {
    return Optional.of(Exclusion.of(code, values));
  }
}
