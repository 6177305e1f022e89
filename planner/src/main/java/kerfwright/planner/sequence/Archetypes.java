package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/**
 * Ordinary instruments a practice could add, new and clean, sized to an outline: what a drawer
 * lacks is found by planning with them, not by a list of advice. Their maximum speeds are usual
 * ones of the trade (common practice): the label of the real instrument counts.
 */
public final class Archetypes {
  private Archetypes() {}

  /** Instruments that fit an outline. */
  public static List<DrawerInstrument> fitting(Outline outline) {
    double widest = outline.shape().walled() ? outline.width().millimetres() - 0.1 : 3;
    double head = Math.max(0.5, Math.min(1.4, widest));
    List<DrawerInstrument> all = new ArrayList<>();
    for (ShankType shank : List.of(ShankType.FG, ShankType.RA)) {
      for (GritClass grit :
          List.of(GritClass.COARSE, GritClass.MEDIUM, GritClass.FINE, GritClass.EXTRA_FINE)) {
        add(all, InstrumentKind.DIAMOND, ShapeFamily.TAPER_ROUND_END, grit, null, head, shank);
      }
      add(
          all,
          InstrumentKind.SINTERED_DIAMOND,
          ShapeFamily.TAPER_ROUND_END,
          GritClass.COARSE,
          null,
          head,
          shank);
      for (int blades : new int[] {4, 6, 8, 12, 30}) {
        add(all, InstrumentKind.CARBIDE, ShapeFamily.PEAR_ELONGATED, null, blades, head, shank);
      }
      for (GritClass grit : List.of(GritClass.FINE, GritClass.SUPER_FINE)) {
        add(all, InstrumentKind.POLISHER, ShapeFamily.CUP, grit, null, 4, shank);
      }
    }
    add(all, InstrumentKind.POLYMER, ShapeFamily.ROUND, null, 8, head, ShankType.RA);
    return all;
  }

  private static void add(
      List<DrawerInstrument> all,
      InstrumentKind kind,
      ShapeFamily shape,
      @Nullable GritClass grit,
      @Nullable Integer blades,
      double headMm,
      ShankType shank) {
    boolean polishes = kind == InstrumentKind.POLISHER;
    double rpm = polishes ? 15_000 : shank == ShankType.FG ? 300_000 : 40_000;
    String id = name(kind, grit, blades, shank);
    all.add(
        new DrawerInstrument(
            id,
            new InstrumentProperties(
                kind,
                null,
                null,
                shape,
                shape.label(),
                grit,
                blades,
                false,
                Length.ofMillimetres(headMm),
                Length.ofMillimetres(polishes ? 3 : 4),
                shank,
                Length.ofMillimetres(shank == ShankType.FG ? 19 : 22),
                RotationalSpeed.ofRpm(rpm),
                List.of()),
            0,
            0,
            DrawerInstrument.State.CLEAN));
  }

  private static String name(
      InstrumentKind kind, @Nullable GritClass grit, @Nullable Integer blades, ShankType shank) {
    String what = grit != null ? grit.label() + " " : "";
    String with =
        blades == null ? "" : blades <= 8 ? " with 4 to 8 blades" : " with " + blades + " blades";
    return shank.label() + " " + what + kind.label() + with;
  }
}
