package kerfwright.planner.heat;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.heat.ColumnSeries;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.field.RadialConduction;
import kerfwright.physics.material.Substance;
import kerfwright.planner.plan.Estimate;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * The temperature at the outer surface of a root while its canal or the chamber is worked in, and
 * for a minute after.
 *
 * <p>Outward from the wall of the bore: dentine, 0.1 mm of cementum, 0.2 mm of ligament taken as
 * water, 2 mm of bone with blood (thicknesses: project settings); see {@link RadialConduction}. A
 * drill in its own hole gives the tooth most of its power, an instrument that moves in a chamber
 * the share of any other cut. The limit is bone at 47 degC for a minute, 10 K over the body.
 *
 * <p>Leaves out: heat along the root, which makes short work come out too warm; the heat of
 * ultrasonic tips, for which no power is known; bone too thin or missing over the root.
 */
public final class RootSurface {
  private static final double CEMENTUM_MM = 0.1;
  private static final double LIGAMENT_MM = 0.2;
  private static final double BONE_MM = 2;
  private static final double BENCH_AIR_W_PER_M2K = 15;
  private static final double EVERY_S = 0.5;

  private RootSurface() {}

  /**
   * The rise at the root surface of a living tooth.
   *
   * @param wall dentine between bore and root surface; empty where neither told nor usual
   * @param bore the hole
   * @param cuts the steps that heat it, as for the pulp
   * @param water water that reaches it
   * @param inputs uncertain inputs; their blood is that of {@link
   *     HeatInputs#rootPerfusionMlPerMinG}
   */
  public static RootHeat of(
      Optional<Range<Length>> wall,
      Bore bore,
      List<CutHeat> cuts,
      FlowRate water,
      HeatInputs inputs) {
    if (wall.isEmpty()) {
      return new RootHeat.NotComputed(RootHeat.Reason.WALL_NOT_KNOWN);
    }
    if (cuts.isEmpty()) {
      return new RootHeat.NotComputed(RootHeat.Reason.NO_CUTS);
    }
    double flow = water.millilitresPerMinute();
    Range<Length> range = wall.get();
    WallHistory typical = living(range.typical().millimetres(), bore, cuts, flow, inputs);
    double thin = living(range.low().millimetres(), bore, cuts, flow, inputs).peakK();
    double thick = living(range.high().millimetres(), bore, cuts, flow, inputs).peakK();
    double middle = typical.peakK();
    return new RootHeat.Computed(
        new Estimate(Math.min(thick, middle), middle, Math.max(thin, middle)), typical);
  }

  private static WallHistory living(
      double wallMm, Bore bore, List<CutHeat> cuts, double flowMlPerMin, HeatInputs inputs) {
    List<HeatLayer> layers =
        List.of(
            layer("dentine", wallMm),
            layer("cementum", CEMENTUM_MM),
            PulpWall.pulp(LIGAMENT_MM),
            layer("cortical-bone", BONE_MM));
    Face blood = Face.perfused(inputs.rootPerfusionMlPerMinG(), RootHeat.BODY_C);
    return history(
        HeatBody.of(BONE_MM, layers, RootHeat.BODY_C, blood),
        wallMm + CEMENTUM_MM,
        bore,
        cuts,
        flowMlPerMin,
        inputs);
  }

  /** The same for an extracted tooth in air, as tests have it. */
  public static WallHistory onTheBench(
      double wallMm,
      Substance dentine,
      Bore bore,
      List<CutHeat> cuts,
      double flowMlPerMin,
      HeatInputs inputs) {
    Face air = Face.washed(new Coolant(BENCH_AIR_W_PER_M2K, inputs.bodyC()));
    return history(
        HeatBody.of(1, List.of(HeatLayer.of(wallMm, dentine)), inputs.bodyC(), air),
        wallMm,
        bore,
        cuts,
        flowMlPerMin,
        inputs);
  }

  private static WallHistory history(
      HeatBody body,
      double surfaceMm,
      Bore bore,
      List<CutHeat> cuts,
      double flowMlPerMin,
      HeatInputs inputs) {
    Coolant rinse = flowMlPerMin > 0 ? inputs.spray(flowMlPerMin) : Coolant.NONE;
    List<HeatStretch> strokes =
        Strokes.of(
            cuts,
            cut -> enteringW(cut, bore, flowMlPerMin, inputs) / bore.wallM2(),
            cut -> flowMlPerMin > 0 ? inputs.under(cut, flowMlPerMin) : Coolant.NONE,
            rinse,
            Coolant.NONE);
    ColumnSeries series =
        new RadialConduction(bore.radiusMm(), body).run(strokes, surfaceMm, EVERY_S);
    return new WallHistory(
        series.timesS(), PulpWall.rises(series.probesC()[0], body.initialC()), body.initialC());
  }

  private static double enteringW(CutHeat cut, Bore bore, double flow, HeatInputs inputs) {
    double wetted = inputs.wettedShare(cut, flow);
    return bore.confined() ? inputs.enteringConfinedW(cut, wetted) : inputs.enteringW(cut, wetted);
  }

  private static HeatLayer layer(String material, double mm) {
    return HeatLayer.of(mm, Materials.packaged().get(material).typical());
  }
}
