package kerfwright.app.drawing;

import java.util.Map;
import java.util.TreeMap;
import kerfwright.app.drawing.chart.HeatChart;
import kerfwright.app.drawing.chart.SpeedChart;
import kerfwright.app.drawing.cut.StrokeDiagram;
import kerfwright.app.drawing.cut.StrokeDiagram.Site;
import kerfwright.app.drawing.instrument.AbrasiveSurface;
import kerfwright.app.drawing.instrument.BladeSection;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.handpiece.HandpieceEntry;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.plan.Stroke;

/** One drawing of every kind, and those at the edges. */
final class DrawingSamples {
  private DrawingSamples() {}

  static Map<String, String> all() {
    return in(Say.in(Language.ENGLISH));
  }

  static Map<String, String> in(Say say) {
    Map<String, String> all = new TreeMap<>();
    instruments(say, all);
    for (int blades : new int[] {4, 6, 8, 12, 30, 40}) {
      all.put("blades-" + blades, BladeSection.draw(say, "b", blades, 1.2));
    }
    for (GritClass grit : GritClass.values()) {
      all.put("abrasive-" + grit.isoCode(), AbrasiveSurface.draw(say, "a", grit, 7));
    }
    for (Stroke stroke : Stroke.values()) {
      for (Site site : Site.values()) {
        all.put(
            "stroke-" + stroke.id() + "-" + site.name().toLowerCase(java.util.Locale.ROOT),
            StrokeDiagram.draw(say, "s", stroke, site));
      }
    }
    strips(say, all);
    java.util.List<Double> starts = java.util.List.of(0.0, 42.0, 70.0, 74.0, 80.0);
    all.put("heat-rising", HeatChart.of(say, InventedPlans.heating(), 5.5, starts).svg(say, "h"));
    all.put(
        "heat-below-zero",
        HeatChart.of(say, InventedPlans.coolingBelowZero(), 5.5, starts).svg(say, "h"));
    for (HandpieceEntry entry : Handpieces.entries()) {
      String name = entry.handpiece().id();
      all.put("speed-" + name, SpeedChart.of(say, name, entry.handpiece().drive()).svg(say, "s"));
    }
    all.put(
        "arch-permanent",
        ArchPicker.draw(
            say, "p", ArchPicker.Dentition.PERMANENT, n -> "/plan?tooth=" + n, new Tooth(16)));
    all.put(
        "arch-primary",
        ArchPicker.draw(say, "p", ArchPicker.Dentition.PRIMARY, n -> "/plan?tooth=" + n, null));
    return all;
  }

  private static void strips(Say say, Map<String, String> all) {
    Map<String, kerfwright.planner.plan.CutPlan> plans =
        Map.of(
            "metal-ceramic", InventedPlans.metalCeramicAccess(),
            "clean-up", InventedPlans.adhesiveCleanUp(),
            "film", InventedPlans.filmOnly(),
            "deep", InventedPlans.deepStack(),
            "bevel", InventedPlans.bevel());
    plans.forEach(
        (name, plan) -> {
          LayerStrip strip = LayerStrip.of(say, "t", plan, LayerStrip.Place.PAGE);
          all.put("strip-" + name + "-key", strip.key());
          for (int i = 0; i < strip.stages().size(); i++) {
            all.put("strip-" + name + "-" + (i + 1), strip.stages().get(i).svg());
          }
        });
  }

  private static void instruments(Say say, Map<String, String> all) {
    for (ShapeFamily shape : ShapeFamily.values()) {
      boolean flat = shape == ShapeFamily.DISC || shape == ShapeFamily.WHEEL;
      double head = flat ? 4 : 1.6;
      double length = flat ? 1 : shape == ShapeFamily.ROUND ? 1.6 : 6;
      all.put(
          "instrument-small-" + shape.name().toLowerCase(java.util.Locale.ROOT),
          InstrumentDrawing.small(
              say,
              "i",
              InventedPlans.diamond(shape, shape.label(), GritClass.COARSE, head, length)));
    }
    all.put(
        "instrument-diamond-taper",
        InstrumentDrawing.full(
            say,
            "i",
            InventedPlans.diamond(
                ShapeFamily.TAPER_ROUND_END, "cone, round end", GritClass.COARSE, 1.6, 8)));
    all.put(
        "instrument-diamond-round",
        InstrumentDrawing.full(
            say,
            "i",
            InventedPlans.diamond(ShapeFamily.ROUND, "round", GritClass.MEDIUM, 1.4, 1.4)));
    all.put(
        "instrument-bur-pear",
        InstrumentDrawing.full(
            say, "i", InventedPlans.bur(ShapeFamily.PEAR_ELONGATED, "pear elongated", 6, 0.8, 3)));
    all.put(
        "instrument-bur-finishing",
        InstrumentDrawing.full(
            say, "i", InventedPlans.bur(ShapeFamily.FLAME, "flame, long", 30, 1.2, 8)));
    all.put(
        "instrument-steel-latch",
        InstrumentDrawing.full(
            say,
            "i",
            InventedPlans.instrument(
                InstrumentKind.STEEL,
                ShapeFamily.ROUND,
                "round",
                null,
                8,
                2.3,
                2.3,
                ShankType.RA,
                22)));
    all.put(
        "instrument-straight-handpiece",
        InstrumentDrawing.full(
            say,
            "i",
            InventedPlans.instrument(
                InstrumentKind.SINTERED_DIAMOND,
                ShapeFamily.BUD,
                "conical bud",
                GritClass.FINE,
                null,
                6,
                12,
                ShankType.HP,
                44.5)));
    all.put(
        "instrument-disc",
        InstrumentDrawing.full(
            say,
            "i",
            InventedPlans.instrument(
                InstrumentKind.DISC,
                ShapeFamily.DISC,
                "disc",
                null,
                null,
                12,
                0.3,
                ShankType.RA,
                22)));
  }
}
