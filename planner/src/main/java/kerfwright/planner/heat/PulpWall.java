package kerfwright.planner.heat;

import java.util.ArrayList;
import java.util.List;
import kerfwright.physics.heat.AxisymmetricConduction;
import kerfwright.physics.heat.ColumnSeries;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.HeatMesh;
import kerfwright.physics.heat.HeatProbe;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatSeries;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.LayeredColumn;

/**
 * The temperature at the pulp wall while the whole sequence is cut, and for a minute after.
 *
 * <p>The tooth is a cylinder of the case's layers over pulp taken as water (0.6 W/(m K), 1000
 * kg/m3, 4180 J/(kg K)) held at body temperature 3 mm deeper; the outline is a round spot of the
 * same area whose floor recedes. Blood flow is left out: against conduction it matters over
 * minutes, not seconds.
 *
 * @param layers the layers from outside to the pulp
 * @param areaMm2 area of the outline
 * @param flowMlPerMin water
 */
public record PulpWall(List<HeatLayer> layers, double areaMm2, double flowMlPerMin) {
  /** How long the heat is followed after the last cut. */
  public static final double AFTER_S = 60;

  private static final double PULP_MM = 3;
  private static final double LEAST_RADIUS_MM = 5;
  private static final double SHORTEST_S = 0.05;

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
        Math.max(LEAST_RADIUS_MM, spotMm() + 2), all, inputs.bodyC(), Face.held(inputs.bodyC()));
  }

  HeatSchedule schedule(List<CutHeat> cuts, HeatInputs inputs) {
    Coolant spray = new Coolant(inputs.sprayWPerM2K(flowMlPerMin), inputs.waterC());
    Coolant under = new Coolant(inputs.underInstrumentWPerM2K(flowMlPerMin), inputs.waterC());
    Coolant air = new Coolant(inputs.airWPerM2K(), inputs.waterC());
    List<HeatStretch> stretches = new ArrayList<>();
    for (CutHeat cut : cuts) {
      if (cut.changeS() > 0) {
        stretches.add(HeatStretch.pause(cut.changeS(), air));
      }
      double flux = inputs.heatShare() * cut.powerW() / (areaMm2 * 1e-6);
      double cutting = Math.max(SHORTEST_S, cut.cuttingS());
      double feed = cut.deepensMm() / cutting;
      double contact = Math.min(cut.contactS(), cutting);
      double whole = Math.floor(cutting / contact + 1e-9) * (contact + cut.pauseS());
      double rest = cutting - Math.floor(cutting / contact + 1e-9) * contact;
      stretches.add(new HeatStretch(whole, flux, contact, cut.pauseS(), under, spray, spray, feed));
      if (rest > 1e-6) {
        stretches.add(new HeatStretch(rest, flux, rest, 0, under, spray, spray, feed));
      }
    }
    stretches.add(HeatStretch.pause(AFTER_S, air));
    return new HeatSchedule(spotMm(), stretches);
  }

  /** The axisymmetric simulation, for the shown result. */
  public WallHistory shown(List<CutHeat> cuts, HeatInputs inputs, double everyS) {
    HeatSeries series =
        new AxisymmetricConduction(
                body(inputs),
                schedule(cuts, inputs),
                List.of(HeatProbe.onAxis(depthMm())),
                HeatMesh.graded(24, 40, 0.1))
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

  /** Greatest rise of the floor while the cuts are made, by the quick column. */
  public double floorPeakK(LayeredColumn column, List<CutHeat> cuts, HeatInputs inputs) {
    ColumnSeries series =
        column.run(body(inputs), schedule(cuts, inputs), new double[] {depthMm()}, AFTER_S);
    return series.peakFloorC() - inputs.bodyC();
  }

  private static double[] rises(double[] temperaturesC, double bodyC) {
    double[] rise = new double[temperaturesC.length];
    for (int i = 0; i < rise.length; i++) {
      rise[i] = temperaturesC[i] - bodyC;
    }
    return rise;
  }
}
