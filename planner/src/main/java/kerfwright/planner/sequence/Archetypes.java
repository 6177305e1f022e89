package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.operation.SpeedClass;
import kerfwright.catalogue.operation.Window;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.operation.Work;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/**
 * Ordinary instruments a practice could add for an operation, new and clean: what a drawer lacks is
 * found by planning with them, not by a list of advice. Their maximum speeds are usual ones of the
 * trade (common practice): the label of the real instrument counts.
 */
public final class Archetypes {
  private static final double USUAL_HEAD_MM = 1.2;
  private static final double ELASTIC_HEAD_MM = 6;
  private static final double ELASTIC_RPM = 15_000;
  private static final double SLOW_RPM = 40_000;
  private static final double FAST_RPM = 450_000;
  private static final int MOST_FORMS = 2;

  private Archetypes() {}

  /** Instruments within the window of an operation. */
  public static List<DrawerInstrument> fitting(Work work) {
    Window window = work.operation().window();
    List<DrawerInstrument> all = new ArrayList<>();
    List<ShapeFamily> forms =
        window.forms().isEmpty() ? List.of(ShapeFamily.TAPER_ROUND_END) : window.forms();
    for (ShankType shank : shanks(work)) {
      for (InstrumentKind kind : window.kinds()) {
        for (ShapeFamily form : forms.subList(0, Math.min(MOST_FORMS, forms.size()))) {
          all.add(of(work, kind, form, shank));
        }
      }
    }
    return all;
  }

  private static List<ShankType> shanks(Work work) {
    List<SpeedClass> speeds = work.operation().operating().speeds();
    boolean onlySlow = speeds.equals(List.of(SpeedClass.LOW));
    boolean noSlow = !speeds.isEmpty() && !speeds.contains(SpeedClass.LOW);
    return onlySlow
        ? List.of(ShankType.RA)
        : noSlow ? List.of(ShankType.FG) : List.of(ShankType.FG, ShankType.RA);
  }

  private static DrawerInstrument of(
      Work work, InstrumentKind kind, ShapeFamily form, ShankType shank) {
    Window window = work.operation().window();
    boolean elastic = kind == InstrumentKind.POLISHER || kind == InstrumentKind.DISC;
    double head = headMm(work, elastic);
    double reach = Math.max(4, work.reachM() * 1e3);
    boolean safe = window.safeEnd() && form != ShapeFamily.ROUND;
    Integer blades = kind.bladed() ? bladesOf(window) : null;
    GritClass grit = kind.bladed() ? null : gritOf(window);
    double rpm = elastic ? ELASTIC_RPM : shank == ShankType.FG ? FAST_RPM : SLOW_RPM;
    return new DrawerInstrument(
        kind.id() + " " + form.id() + " " + shank.name(),
        new InstrumentProperties(
            kind,
            null,
            null,
            form,
            form.label(),
            grit,
            blades,
            false,
            safe,
            elastic ? window.abrasive().isEmpty() ? "diamond" : window.abrasive() : "",
            Length.ofMillimetres(head),
            Length.ofMillimetres(form == ShapeFamily.ROUND ? head : reach),
            shank,
            Length.ofMillimetres(Math.max(shank == ShankType.FG ? 19 : 22, 10 + reach)),
            RotationalSpeed.ofRpm(rpm),
            List.of()),
        0,
        0,
        DrawerInstrument.State.CLEAN);
  }

  private static double headMm(Work work, boolean elastic) {
    double usual = elastic ? ELASTIC_HEAD_MM : USUAL_HEAD_MM;
    double most = work.slotWidthM() > 0 ? 0.8 * work.slotWidthM() : work.headMostM();
    return Math.max(work.headLeastM() * 1e3, Math.min(most * 1e3, usual));
  }

  private static Integer bladesOf(Window window) {
    return window.leastBlades() > 0 ? window.leastBlades() : 6;
  }

  private static @Nullable GritClass gritOf(Window window) {
    return window.grits().stream().sorted().findFirst().orElse(GritClass.MEDIUM);
  }
}
