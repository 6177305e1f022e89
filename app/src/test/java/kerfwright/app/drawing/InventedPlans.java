package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.plan.APlan;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.physics.cutting.TurbineDrive;
import kerfwright.physics.material.Substance;
import kerfwright.planner.casework.Aim;
import kerfwright.planner.casework.AtHand;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.HeatCurve;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.StepTimes;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Finding;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/** Invented instruments, cases and plans; their figures only serve to be drawn. */
final class InventedPlans {
  private static final Handpiece TURBINE =
      new Handpiece(
          "turbine",
          "turbine",
          ShankType.FG,
          new TurbineDrive(RotationalSpeed.ofRpm(350_000), new Torque(1e-3)),
          List.of());

  private InventedPlans() {}

  static InstrumentProperties diamond(
      ShapeFamily shape, String name, GritClass grit, double head, double length) {
    return instrument(
        InstrumentKind.DIAMOND, shape, name, grit, null, head, length, ShankType.FG, 21);
  }

  static InstrumentProperties bur(
      ShapeFamily shape, String name, int blades, double head, double length) {
    return instrument(
        InstrumentKind.CARBIDE, shape, name, null, blades, head, length, ShankType.FG, 19);
  }

  static InstrumentProperties instrument(
      InstrumentKind kind,
      ShapeFamily shape,
      String name,
      GritClass grit,
      Integer blades,
      double head,
      double length,
      ShankType shank,
      double overall) {
    return new InstrumentProperties(
        kind,
        null,
        null,
        shape,
        name,
        grit,
        blades,
        false,
        Length.ofMillimetres(head),
        Length.ofMillimetres(length),
        shank,
        Length.ofMillimetres(overall),
        RotationalSpeed.ofRpm(300_000),
        List.of());
  }

  static Layer layer(String id, String label, Material.Group group, double typicalMm) {
    return layer(id, label, group, typicalMm, typicalMm, typicalMm);
  }

  static Layer layer(
      String id, String label, Material.Group group, double low, double typical, double high) {
    Substance substance = new Substance(1e9, 20e9, 1e6, 2000, 0.6, 1200, 1e9, 0);
    return new Layer(
        new Material(
            id,
            label,
            group,
            List.of(),
            new Material.Spread(substance, substance, substance),
            Materials.packaged().get(id).traits()),
        new Range<>(
            Length.ofMillimetres(low), Length.ofMillimetres(typical), Length.ofMillimetres(high)));
  }

  /** Metal-ceramic crown over cement and dentine, opened in four steps. */
  static CutPlan metalCeramicAccess() {
    List<Layer> stack =
        List.of(
            layer(
                "feldspathic-porcelain",
                "feldspathic porcelain",
                Material.Group.CERAMIC,
                1.0,
                1.2,
                1.5),
            layer("co-cr-alloy", "Co-Cr alloy", Material.Group.METAL, 0.4),
            layer("zinc-phosphate", "zinc phosphate", Material.Group.CEMENT, 0.05),
            layer("dentine", "dentine", Material.Group.TOOTH, 2.0, 3.0, 3.6));
    return plan(
        Procedure.ACCESS_CAVITY,
        stack,
        new Outline(Outline.Shape.ELLIPSE, Length.ofMillimetres(4), Length.ofMillimetres(3)),
        new Keep("dentine", Length.ofMillimetres(0.5)),
        new double[] {0, 1.2, 1.6, 2.6, 3.4},
        new Estimate(0.8, 1.25, 1.7));
  }

  /**
   * Aged adhesive over enamel: a tenth of a millimetre on an open surface, nothing of the enamel.
   */
  static CutPlan adhesiveCleanUp() {
    List<Layer> stack =
        List.of(
            layer(
                "adhesive-resin-aged",
                "adhesive resin, aged",
                Material.Group.POLYMER,
                0.05,
                0.1,
                0.2),
            layer("enamel", "enamel", Material.Group.TOOTH, 0.8, 1.0, 1.2));
    return plan(
        Procedure.ADHESIVE_CLEAN_UP,
        stack,
        new Outline(Outline.Shape.PATCH, Length.ofMillimetres(4), Length.ofMillimetres(3.5)),
        new Keep("enamel", null),
        new double[] {0, 0.08, 0.1},
        null);
  }

  /** Only the film of adhesive is given: the thinnest stack. */
  static CutPlan filmOnly() {
    return plan(
        Procedure.ADHESIVE_CLEAN_UP,
        List.of(layer("adhesive-resin-aged", "adhesive resin, aged", Material.Group.POLYMER, 0.1)),
        new Outline(Outline.Shape.PATCH, Length.ofMillimetres(4), Length.ofMillimetres(3.5)),
        null,
        new double[] {0, 0.06, 0.09, 0.1},
        null);
  }

  /** Eight millimetres of six layers, seven steps. */
  static CutPlan deepStack() {
    List<Layer> stack =
        List.of(
            layer("zirconia-3y", "zirconia 3Y", Material.Group.CERAMIC, 1.2, 1.5, 2.0),
            layer("resin-cement", "resin cement", Material.Group.CEMENT, 0.02, 0.05, 0.1),
            layer("composite-aged", "composite, aged", Material.Group.POLYMER, 1.0, 1.5, 2.5),
            layer("adhesive-resin-aged", "adhesive resin, aged", Material.Group.POLYMER, 0.05),
            layer("carious-dentine", "carious dentine", Material.Group.TOOTH, 0.5, 1.0, 1.5),
            layer("dentine", "dentine", Material.Group.TOOTH, 3.2, 3.9, 4.4));
    return plan(
        Procedure.ACCESS_CAVITY,
        stack,
        new Outline(Outline.Shape.ELLIPSE, Length.ofMillimetres(5), Length.ofMillimetres(3.2)),
        new Keep("dentine", Length.ofMillimetres(0.5)),
        new double[] {0, 1.5, 1.55, 3.05, 3.1, 4.1, 6.8, 6.9},
        new Estimate(0.6, 1.1, 1.6));
  }

  static CutPlan bevel() {
    return plan(
        Procedure.ENAMEL_BEVEL,
        List.of(
            layer("enamel", "enamel", Material.Group.TOOTH, 0.9, 1.1, 1.3),
            layer("dentine", "dentine", Material.Group.TOOTH, 2.0, 2.4, 3.0)),
        new Outline(Outline.Shape.BAND, Length.ofMillimetres(8), Length.ofMillimetres(1.5)),
        null,
        new double[] {0, 0.45, 0.5},
        new Estimate(2.4, 3.0, 3.8));
  }

  static CutPlan refused() {
    CutPlan made = metalCeramicAccess();
    return new CutPlan(
        made.cutCase(),
        1,
        256,
        List.of(),
        List.of(),
        List.of(),
        null,
        null,
        null,
        CutPlan.PlanTimes.NONE,
        List.of(),
        List.of(),
        List.of(Finding.refuse("nothing-allowed", Message.of("finding.nothing-to-cut"))),
        List.of());
  }

  static HeatCurve heating() {
    return curve(2.1, 0);
  }

  static HeatCurve coolingBelowZero() {
    return curve(0.7, -4);
  }

  private static HeatCurve curve(double scale, double shift) {
    List<Double> time = new ArrayList<>();
    List<Double> low = new ArrayList<>();
    List<Double> mid = new ArrayList<>();
    List<Double> high = new ArrayList<>();
    for (int i = 0; i <= 900; i++) {
      double s = i * 0.2;
      double warm =
          scale * (1 - Math.exp(-s / 25)) * (s < 120 ? 1 : Math.exp(-(s - 120) / 20))
              + 0.25 * Math.sin(s / 2.2) * (s < 120 ? 1 : 0);
      double cold = shift * (1 - Math.exp(-s / 30));
      time.add(s);
      low.add(0.6 * warm + 1.25 * cold);
      mid.add(warm + cold);
      high.add(1.7 * warm + 0.7 * cold + 0.05);
    }
    return new HeatCurve(time, low, mid, high);
  }

  private static CutPlan plan(
      Procedure procedure,
      List<Layer> stack,
      Outline outline,
      Keep keep,
      double[] depthsMm,
      Estimate left) {
    CutCase asked =
        new CutCase(
            "K-0412",
            procedure,
            new Tooth(16),
            new Condition(PulpState.VITAL, stack),
            new Aim(null, outline, keep, null),
            new AtHand(List.of(TURBINE), FlowRate.ofMillilitresPerMinute(50)),
            List.of());
    List<PlannedStep> steps = new ArrayList<>();
    for (int i = 1; i < depthsMm.length; i++) {
      steps.add(step(i, depthsMm[i - 1], depthsMm[i]));
    }
    PulpHeat pulp =
        left == null
            ? null
            : new PulpHeat(
                new Estimate(1, 2, 3),
                Estimate.exactly(0),
                5.5,
                Estimate.exactly(0),
                left,
                heating());
    return new CutPlan(
        asked,
        1,
        256,
        steps,
        List.of(),
        List.of(),
        null,
        pulp,
        null,
        CutPlan.PlanTimes.NONE,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static PlannedStep step(int order, double fromMm, double toMm) {
    Estimate one = Estimate.exactly(1);
    return new PlannedStep(
        order,
        0,
        "dentine",
        Purpose.BULK,
        APlan.operation(3, 0, "dentine"),
        new DrawerInstrument(
            "D" + order,
            diamond(ShapeFamily.ROUND, "round", GritClass.MEDIUM, 1.4, 1.4),
            0,
            0,
            DrawerInstrument.State.CLEAN),
        TURBINE,
        300_000,
        one,
        one,
        one,
        one,
        Stroke.AGAINST_ROTATION,
        one,
        one,
        new Estimate(fromMm * 0.9, fromMm, fromMm * 1.1),
        new Estimate(toMm * 0.9, toMm, toMm * 1.1),
        one,
        one,
        one,
        new StepTimes(one, one, one, false),
        one,
        List.of(),
        List.of(),
        1);
  }
}
