package kerfwright.app.plan;

import java.math.BigDecimal;
import java.util.List;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.physics.cutting.TurbineDrive;
import kerfwright.physics.material.Substance;
import kerfwright.planner.casework.Aim;
import kerfwright.planner.casework.AtHand;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.FilledIn;
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
import kerfwright.planner.plan.RatioBand;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.planner.plan.StepOperation;
import kerfwright.planner.plan.StepTimes;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.SourceKey;
import kerfwright.quantity.Torque;

/** A plan made by hand: two steps through a crown, figures chosen to show every way of writing. */
public final class APlan {
  private static final SourceKey PRACTICE = SourceKey.COMMON_PRACTICE;
  private static final Handpiece TURBINE =
      new Handpiece(
          "turbine",
          "air turbine",
          ShankType.FG,
          new TurbineDrive(RotationalSpeed.ofRpm(400_000), Torque.ofNewtonMillimetres(1.2)),
          List.of(PRACTICE));

  private APlan() {}

  public static CutPlan throughACrown() {
    return new CutPlan(
        aMolarWithACrown(),
        7,
        64,
        List.of(
            step(1, 0, "feldspathic-porcelain", diamond(), Stroke.AGAINST_ROTATION, 0, 1.2),
            step(2, 1, "dentine", carbide(), Stroke.AXIAL, 1.2, 1.75)),
        List.of(),
        List.of(),
        null,
        new PulpHeat(
            new Estimate(1.2, 2.4, 4.1),
            new Estimate(0, 0, 0),
            5.5,
            new Estimate(0, 0.004, 0.031),
            new Estimate(0.5, 1.25, 1.9),
            new HeatCurve(
                List.of(0.0, 10.0, 75.0),
                List.of(0.0, 0.4, 0.1),
                List.of(0.0, 1.0 / 3, 0.2),
                List.of(0.0, 4.1, 0.4))),
        null,
        new CutPlan.PlanTimes(
            new Estimate(40, 100.5, 200),
            new Estimate(62, 131.5, 240),
            new Estimate(100, 200, 400)),
        List.of(),
        List.of(
            new RunnerUp(
                1,
                carbide(),
                "turbine",
                Message.of("reason.why", List.of(Message.of("reason.why-changes", 2))),
                1.8333333,
                new RatioBand(1, 1.8, 3.2))),
        List.of(
            Finding.warn(
                "little-water",
                Message.of("finding.little-water", new BigDecimal("30")),
                new SourceKey("a-2005")),
            Finding.note("order-of-magnitude", Message.of("finding.order-of-magnitude"))),
        List.of(Finding.note("caution-c01", Message.of("caution.c01"), PRACTICE)));
  }

  public static CutPlan refused() {
    return new CutPlan(
        aMolarWithACrown(),
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
        List.of(Finding.refuse("nothing-fits", Message.of("finding.nothing-to-cut"), PRACTICE)),
        List.of(Finding.note("caution-c01", Message.of("caution.c01"), PRACTICE)));
  }

  static CutCase aMolarWithACrown() {
    return new CutCase(
        "K-0412",
        Procedure.ACCESS_CAVITY,
        new Tooth(16),
        new Condition(
            PulpState.VITAL,
            "crown",
            null,
            List.of(
                new Layer(
                    material("feldspathic-porcelain", "Feldspathic porcelain"),
                    new Range<>(
                        Length.ofMillimetres(1),
                        Length.ofMillimetres(1.2),
                        Length.ofMillimetres(1.5))),
                new Layer(material("dentine", "Dentine"), Range.exactly(Length.ofMillimetres(3)))),
            null),
        new Aim(
            null,
            new Outline(Outline.Shape.ELLIPSE, Length.ofMillimetres(4), Length.ofMillimetres(3)),
            new Keep("dentine", Length.ofMillimetres(0.5)),
            null),
        new AtHand(List.of(TURBINE), FlowRate.ofMillilitresPerMinute(50)),
        List.of(new FilledIn("layers", List.of(new SourceKey("stack-1999")), Basis.FROM_MEMORY)));
  }

  private static Material material(String id, String label) {
    Substance any = new Substance(3e9, 60e9, 1e6, 2500, 1, 900, 3e9, 0);
    return new Material(
        id,
        label,
        Material.Group.CERAMIC,
        List.of(),
        new Material.Spread(any, any, any),
        java.util.Set.of());
  }

  private static PlannedStep step(
      int order,
      int layer,
      String material,
      DrawerInstrument instrument,
      Stroke stroke,
      double from,
      double to) {
    return new PlannedStep(
        order,
        layer,
        material,
        layer == 0 ? Purpose.BULK : Purpose.APPROACH,
        operation(layer == 0 ? 2 : 4, layer, material),
        instrument,
        TURBINE,
        318_456,
        new Estimate(251_000, 274_321, 299_999),
        new Estimate(18.21, 20.1, 22.05),
        new Estimate(0.5, 0.8, 1.2),
        Estimate.exactly(50),
        stroke,
        Estimate.exactly(4),
        order == 1 ? new Estimate(1, 1.5, 2) : Estimate.exactly(0),
        Estimate.exactly(from),
        new Estimate(to - 0.1, to, to + 0.1),
        new Estimate(5.41, 9.44, 17.9),
        new Estimate(0.8, 1.1234567, 1.9),
        new Estimate(2.9, 3.1, 3.3),
        new StepTimes(
            new Estimate(8, 11, 18),
            new Estimate(8.4, 12.3, 20.4),
            new Estimate(30, 47, 70),
            false),
        new Estimate(0.01, 0.02, 0.04),
        List.of(
            new Reason(
                "cracks",
                Message.of("reason.model-polish", new BigDecimal("0.25")),
                true,
                Basis.FITTED,
                List.of()),
            new Reason(
                "habit",
                Message.of("reason.practice-rounded-corners-for"),
                true,
                Basis.COMMON_PRACTICE,
                List.of(PRACTICE)),
            new Reason(
                "load",
                Message.of("reason.makers-light-load-against"),
                false,
                Basis.SEEN,
                List.of(new SourceKey("b-2010")))),
        List.of(
            Finding.warn(
                "top-speed",
                Message.of("finding.maximum-speed", Message.of("figure.rpm", "450 000")),
                PRACTICE)),
        1);
  }

  /** One of the operations of an access, by its place. */
  public static StepOperation operation(int place, int layer, String material) {
    Operation row = OperationTable.packaged().operations("access-natural-molar").get(place);
    Message cue = Message.of(row.key("cue"), new BigDecimal("5.4"));
    return new StepOperation(
        row,
        row.heat(),
        cue,
        Message.of(row.key("stop"), new BigDecimal("5.4"), new BigDecimal("7.4")),
        List.of(new StepOperation.LayerCut(layer, material, 1.9)),
        null,
        7,
        List.of(new StepOperation.Remaining("dentine", new Estimate(0.5, 1.25, 1.9), 0.5)),
        new Estimate(0.5, 1.25, 1.9));
  }

  static DrawerInstrument diamond() {
    return instrument(
        "D1", InstrumentKind.DIAMOND, "806 314 197 534 014", null, GritClass.COARSE, null);
  }

  static DrawerInstrument carbide() {
    return instrument("B1", InstrumentKind.CARBIDE, null, "330", null, 6);
  }

  private static DrawerInstrument instrument(
      String id, InstrumentKind kind, String iso, String us, GritClass grit, Integer blades) {
    InstrumentProperties what =
        new InstrumentProperties(
            kind,
            iso,
            us,
            ShapeFamily.TAPER_ROUND_END,
            "taper, round end",
            grit,
            blades,
            false,
            Length.ofMillimetres(1.4),
            Length.ofMillimetres(8),
            ShankType.FG,
            Length.ofMillimetres(19),
            RotationalSpeed.ofRpm(450_000),
            List.of());
    return new DrawerInstrument(id, what, 0, 1, DrawerInstrument.State.CLEAN);
  }
}
