package kerfwright.planner.heat;

import java.util.ArrayList;
import java.util.List;
import kerfwright.physics.heat.ColumnSeries;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatSeries;

/**
 * The temperature at the pulp wall while the whole sequence is cut, and for a minute after.
 *
 * <p>The tooth is a cylinder of the case's layers over half the width of a pulp chamber, taken as
 * water (0.6 W/(m K), 1000 kg/m3, 4180 J/(kg K)) with the blood of the inputs and the root behind
 * it (see {@link kerfwright.physics.heat.Face.Perfused}); the outline is a round spot of the same
 * area whose floor recedes.
 *
 * @param layers the layers from outside to the pulp
 * @param areaMm2 area of the outline
 * @param flowMlPerMin water
 */
public record PulpWall(List<HeatLayer> layers, double areaMm2, double flowMlPerMin) {
  /** How long the heat is followed after the last cut. */
  public static final double AFTER_S = Strokes.AFTER_S;

  /**
   * Half the width of a pulp chamber (project setting; chambers are 1.6 to 1.9 mm high in molars,
   * anatomy/values.csv, and about twice as wide).
   */
  public static final double PULP_MM = 1.5;

  /**
   * The root takes heat as dentine of any depth, effusivity over root of pi times time: 90 after a
   * minute, 40 after five; its neck is two thirds as large as the crown (derived; project setting).
   */
  private static final double ROOT_W_PER_M2K = 25;

  private static final double LEAST_RADIUS_MM = 5;

  /** Within 0.1 K of steps of 0.05 s on a finer mesh, over all examples. */
  private static final double LONGEST_STEP_S = 0.4;

  public PulpWall {
    layers = List.copyOf(layers);
  }

  /** So much pulp, taken as water. */
  public static HeatLayer pulp(double thicknessMm) {
    return new HeatLayer(thicknessMm, 0.6, 1000, 4180);
  }

  public double depthMm() {
    return layers.stream().mapToDouble(HeatLayer::thicknessMm).sum();
  }

  double spotMm() {
    return Math.sqrt(areaMm2 / Math.PI);
  }

  HeatBody body(HeatInputs inputs) {
    List<HeatLayer> all = new ArrayList<>(layers);
    all.add(pulp(PULP_MM));
    return HeatBody.of(
        Math.max(LEAST_RADIUS_MM, spotMm() + 2),
        all,
        inputs.bodyC(),
        Face.perfused(inputs.perfusionMlPerMinG(), inputs.bodyC(), ROOT_W_PER_M2K));
  }

  HeatSchedule schedule(List<CutHeat> cuts, HeatInputs inputs) {
    List<HeatStretch> stretches =
        Strokes.of(
            downToThePulp(cuts),
            cut -> inputs.enteringW(cut, inputs.wettedShare(cut, flowMlPerMin)) / (areaMm2 * 1e-6),
            cut -> inputs.under(cut, flowMlPerMin),
            inputs.spray(flowMlPerMin),
            inputs.air());
    return new HeatSchedule(spotMm(), stretches);
  }

  /** What goes deeper than the wall, as along a post, leaves the tooth of this model. */
  private List<CutHeat> downToThePulp(List<CutHeat> cuts) {
    List<CutHeat> within = new ArrayList<>();
    double left = depthMm();
    for (CutHeat cut : cuts) {
      double deepens = Math.min(cut.deepensMm(), left);
      left -= deepens;
      within.add(deepens == cut.deepensMm() ? cut : cut.deepening(deepens));
    }
    return within;
  }

  /** The axisymmetric simulation, for the shown result. */
  public WallHistory shown(List<CutHeat> cuts, HeatInputs inputs, double everyS) {
    HeatSeries series =
        new AxisymmetricConduction(
                body(inputs),
                schedule(cuts, inputs),
                List.of(HeatProbe.onAxis(depthMm())),
                HeatMesh.graded(24, 40, LONGEST_STEP_S))
            .run(everyS);
    return new WallHistory(
        series.timesS(), rises(series.probesC()[0], inputs.bodyC()), inputs.bodyC());
  }

  /** The quick column, for search and sampling. */
  public WallHistory quick(
      LayeredColumn column, List<CutHeat> cuts, HeatInputs inputs, double everyS) {
    ColumnSeries series =
        column.run(body(inputs), schedule(cuts, inputs), new double[] {depthMm()}, everyS);
    return new WallHistory(
        series.timesS(), rises(series.probesC()[0], inputs.bodyC()), inputs.bodyC());
  }

  /** The same where the water differs from cut to cut: one flow for each, mL/min. */
  public WallHistory quick(
      LayeredColumn column,
      List<CutHeat> cuts,
      List<Double> flowsMlPerMin,
      HeatInputs inputs,
      double everyS) {
    List<HeatStretch> stretches = new ArrayList<>();
    List<CutHeat> within = downToThePulp(cuts);
    for (int i = 0; i < within.size(); i++) {
      PulpWall wall = new PulpWall(layers, areaMm2, flowsMlPerMin.get(i));
      List<HeatStretch> some = wall.schedule(within.subList(i, i + 1), inputs).stretches();
      // each ends with the pause that follows the last
      stretches.addAll(i + 1 < within.size() ? some.subList(0, some.size() - 1) : some);
    }
    ColumnSeries series =
        column.run(
            body(inputs), new HeatSchedule(spotMm(), stretches), new double[] {depthMm()}, everyS);
    return new WallHistory(
        series.timesS(), rises(series.probesC()[0], inputs.bodyC()), inputs.bodyC());
  }

  /** Greatest rise of the floor while the cuts are made, by the quick column. */
  public double floorPeakK(LayeredColumn column, List<CutHeat> cuts, HeatInputs inputs) {
    ColumnSeries series =
        column.run(body(inputs), schedule(cuts, inputs), new double[] {depthMm()}, AFTER_S);
    return series.peakFloorC() - inputs.bodyC();
  }

  static double[] rises(double[] temperaturesC, double bodyC) {
    double[] rise = new double[temperaturesC.length];
    for (int i = 0; i < rise.length; i++) {
      rise[i] = temperaturesC[i] - bodyC;
    }
    return rise;
  }
}
