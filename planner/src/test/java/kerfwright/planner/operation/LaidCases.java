package kerfwright.planner.operation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.size.Place;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Aim;
import kerfwright.planner.casework.AtHand;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/** Cases to lay operations through: a stack as material, thickness in mm, and so on. */
final class LaidCases {
  private LaidCases() {}

  static CutCase access(int fdi, Object... stack) {
    return of("access-cavity", fdi, PulpState.VITAL, stack);
  }

  static CutCase of(String procedure, int fdi, PulpState pulp, Object... stack) {
    return with(procedure, fdi, pulp, outline(Outline.Shape.ELLIPSE, 4.0, 3.0), stack);
  }

  static Outline outline(Outline.Shape shape, double length, double width) {
    return new Outline(shape, Length.ofMillimetres(length), Length.ofMillimetres(width));
  }

  static CutCase with(String procedure, int fdi, PulpState pulp, Outline outline, Object... stack) {
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < stack.length; i += 2) {
      layers.add(
          new Layer(
              Materials.packaged().get((String) stack[i]),
              Range.exactly(Length.ofMillimetres(((Number) stack[i + 1]).doubleValue()))));
    }
    return new CutCase(
        "K-1",
        new Procedure(procedure),
        new Tooth(fdi),
        new Condition(pulp, layers),
        new Aim(outline),
        new AtHand(Handpieces.all(), FlowRate.ofMillilitresPerMinute(50)),
        List.of());
  }

  /** The same case that must keep something. */
  static CutCase keeping(CutCase c, Keep keep) {
    Aim aim = new Aim(c.intended(), c.outline(), keep, c.finishRa());
    return new CutCase(
        c.reference(), c.procedure(), c.tooth(), c.condition(), aim, c.atHand(), List.of());
  }

  /** The same case whose chamber is known to lie so deep. */
  static CutCase withChamber(CutCase c, double mm, double errorMm, Known known) {
    Range<Length> below =
        new Range<>(
            Length.ofMillimetres(mm - errorMm),
            Length.ofMillimetres(mm),
            Length.ofMillimetres(mm + errorMm));
    Condition condition =
        new Condition(c.pulp(), null, null, c.layers(), new ChamberDepth(below, known));
    return new CutCase(
        c.reference(), c.procedure(), c.tooth(), condition, c.aim(), c.atHand(), List.of());
  }

  /** A usual size of the case's tooth. */
  static double size(String name, CutCase c, String variant) {
    return new CaseQuantities(
            c,
            new Depths(c.layers()),
            new Place(c.tooth(), c.procedure().id(), variant),
            Map.of(),
            1.2)
        .applyAsDouble(name);
  }

  /** A usual case of every variant. */
  static Map<String, CutCase> ofEveryVariant() {
    Map<String, CutCase> all = new LinkedHashMap<>();
    all.put("access-natural-molar", access(46, "enamel", 1.0, "dentine", 3.4));
    all.put("access-natural-premolar", access(15, "enamel", 1.0, "dentine", 4.0));
    all.put("access-natural-anterior", access(21, "enamel", 0.6, "dentine", 4.6));
    Object[] crown = {"feldspathic-porcelain", 1.2, "co-cr-alloy", 0.4, "zinc-phosphate", 0.12};
    all.put("access-metal-ceramic", access(26, on(crown, "dentine", 3.0)));
    Object[] zirconia = {"zirconia-3y", 1.0, "resin-cement", 0.08};
    all.put("access-zirconia", access(26, on(zirconia, "dentine", 3.8)));
    Object[] glass = {"lithium-disilicate", 1.5, "resin-cement", 0.08};
    all.put("access-glass-ceramic", access(15, on(glass, "dentine", 3.5)));
    Object[] gold = {"gold-alloy", 1.3, "zinc-phosphate", 0.12};
    all.put("access-full-metal", access(47, on(gold, "dentine", 3.7)));
    all.put("access-unknown-crown", all.get("access-metal-ceramic"));
    all.put("deroof-and-refine", access(46, "dentine", 3.0));
    Outline slot = outline(Outline.Shape.SLOT, 10.5, 1.4);
    String section = "crown-sectioning";
    PulpState dead = PulpState.NON_VITAL;
    all.put("sectioning-metal", with(section, 37, dead, slot, on(gold, "dentine", 2.0)));
    all.put("sectioning-metal-ceramic", with(section, 16, dead, slot, on(crown, "dentine", 2.0)));
    all.put("sectioning-unknown-crown", all.get("sectioning-metal-ceramic"));
    all.put("sectioning-zirconia", with(section, 16, dead, slot, on(zirconia, "dentine", 2.0)));
    all.put("sectioning-glass-ceramic", with(section, 16, dead, slot, on(glass, "dentine", 2.0)));
    Object[] decay = {"enamel", 1.0, "carious-dentine", 1.0, "dentine", 2.2};
    for (String variant :
        List.of("cavity-carious-moderate", "cavity-carious-deep", "cavity-conservative")) {
      all.put(variant, of("cavity-preparation", 36, PulpState.VITAL, decay));
    }
    PulpState vital = PulpState.VITAL;
    Object[] sound = {"enamel", 1.0, "dentine", 3.2};
    all.put(
        "enamel-bevel",
        with("enamel-bevel", 21, vital, outline(Outline.Shape.BAND, 8, 0.5), sound));
    for (String material : List.of("ceramic", "metal-ceramic", "metal")) {
      all.put("crown-posterior-" + material, of("crown-preparation", 16, vital, sound));
      all.put("crown-anterior-" + material, of("crown-preparation", 11, vital, sound));
    }
    all.put("veneer-preparation", of("veneer-preparation", 11, vital, sound));
    all.put("amalgam-removal", of("amalgam-removal", 46, vital, "amalgam", 2.0, "dentine", 2.0));
    all.put(
        "composite-removal-fresh",
        of("composite-removal", 36, vital, "composite", 2.0, "dentine", 2.0));
    all.put(
        "composite-removal-aged",
        of("composite-removal", 12, vital, "composite-aged", 1.4, "dentine", 1.6));
    all.put(
        "adhesive-clean-up",
        of("adhesive-clean-up", 13, vital, "adhesive-resin-aged", 0.2, "enamel", 0.9));
    Outline mark = outline(Outline.Shape.PATCH, 1.5, 1.2);
    Map<String, Object[]> surfaces =
        Map.of(
            "enamel", sound,
            "zirconia", on(zirconia, "dentine", 3.0),
            "glass-ceramic", on(glass, "dentine", 3.0),
            "metal", on(gold, "dentine", 3.0),
            "composite", new Object[] {"composite", 2.0, "dentine", 2.0});
    surfaces.forEach(
        (id, stack) -> {
          all.put("adjust-" + id, with("occlusal-adjustment", 16, vital, mark, stack));
          all.put("finish-polish-" + id, of("finish-composite", 16, vital, stack));
        });
    all.put(
        "post-removal-fibre",
        of("post-exposure", 22, dead, "composite-aged", 2.0, "resin-cement", 0.2, "fibre-post", 9));
    all.put(
        "post-removal-steel",
        of("post-exposure", 35, dead, "amalgam", 2.0, "zinc-phosphate", 0.2, "steel-post", 8));
    for (String variant :
        List.of("inlay-cavity-ceramic", "onlay-cavity-ceramic", "onlay-cavity-metal")) {
      all.put(
          variant,
          with(
              "cavity-preparation",
              36,
              vital,
              outline(Outline.Shape.RECTANGLE, 5.0, 2.4),
              "enamel",
              1.2,
              "dentine",
              3.6));
    }
    return all;
  }

  /** A crown on something. */
  private static Object[] on(Object[] crown, Object... below) {
    return Stream.concat(Arrays.stream(crown), Arrays.stream(below)).toArray();
  }
}
