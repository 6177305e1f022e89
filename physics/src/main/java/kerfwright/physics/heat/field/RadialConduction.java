package kerfwright.physics.heat.field;

import java.util.Arrays;
import java.util.List;
import kerfwright.physics.heat.ColumnSeries;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.numeric.Spacing;
import kerfwright.physics.heat.numeric.TimedOutputs;
import kerfwright.quantity.Check;

/**
 * Computes the temperature in the layers round a heated bore, outward from its wall: root dentine,
 * cementum, ligament and bone round a canal or a pulp chamber.
 *
 * <pre>
 *   rho c dT/dt = (1/r) d/dr (r k dT/dr) - W (T - T_blood)
 *   wall of the bore, cutting:   -k dT/dr = q + h_on (T_on - T)
 *   wall of the bore, pause:     -k dT/dr = h_off (T_off - T)
 *   outermost:                   the body's bottom face: insulated, washed, or tissue with blood
 *
 *   r   distance from the axis, m       q   heat flux into the wall, W/m2
 *   W   blood, in the last layer only (see {@link Face.Perfused})
 * </pre>
 *
 * <p>Method: finite volumes with every layer boundary on a node, implicit (backward Euler) with
 * short steps after each switch; blood takes its share after each step. Heat is conserved to
 * rounding. The layers of the {@link HeatBody} are read outward, its bottom is the outermost face,
 * its radius is not used; feed and the coolant outside the spot are not used either.
 *
 * <p>Valid where the heated stretch is long against the wall, for no heat leaves along the axis: a
 * short heated stretch comes out too warm. Leaves out: a bore that is not round or not in the
 * middle (take the thinnest wall), gaps in the ligament. Tested against the steady cylinder, the
 * slab (a bore wide against its wall) and the stored heat.
 *
 * <p>Source: Carslaw HS, Jaeger JC. Conduction of Heat in Solids, 2nd ed. 1959, ch. 7 and 13 (from
 * memory).
 */
public final class RadialConduction {
  private static final int CELLS = 40;
  private static final double LONGEST_STEP_S = 0.1;
  private static final int STEPS_A_PHASE = 20;
  private static final double LONGEST_OF_LONG_S = 2;

  private final double[] r;
  private final double[] capacity;
  private final double[] link;
  private final double[] t;
  private final double[] upper;
  private final double[] tissueM;
  private final double boreM;
  private final double outerLink;
  private final double outerC;
  private final Face.Perfused tissue;
  private final boolean held;

  /** Prepares a run round a bore of a given radius. */
  public RadialConduction(double boreRadiusMm, HeatBody body) {
    Check.positive("Radius of the bore", "mm", boreRadiusMm);
    boreM = boreRadiusMm * 1e-3;
    List<HeatLayer> layers = body.layers();
    double[] borders = new double[layers.size() - 1];
    double depth = 0;
    for (int l = 0; l < borders.length; l++) {
      depth += layers.get(l).thicknessMm() * 1e-3;
      borders[l] = depth;
    }
    double[] z = Spacing.lines(Spacing.breaks(body.depthMm() * 1e-3, borders), CELLS, at -> 1);
    r = new double[z.length];
    for (int j = 0; j < z.length; j++) {
      r[j] = boreM + z[j];
    }
    capacity = new double[z.length];
    link = new double[z.length];
    int layer = 0;
    double layerEnd = layers.get(0).thicknessMm() * 1e-3;
    for (int j = 0; j + 1 < z.length; j++) {
      double middle = 0.5 * (r[j] + r[j + 1]);
      while (middle - boreM > layerEnd && layer < layers.size() - 1) {
        layer++;
        layerEnd += layers.get(layer).thicknessMm() * 1e-3;
      }
      double c = layers.get(layer).volumetricHeatJPerM3K();
      capacity[j] += 0.5 * c * (middle * middle - r[j] * r[j]);
      capacity[j + 1] += 0.5 * c * (r[j + 1] * r[j + 1] - middle * middle);
      link[j] = layers.get(layer).conductivityWPerMK() / Math.log(r[j + 1] / r[j]);
    }
    t = new double[z.length];
    upper = new double[z.length];
    Arrays.fill(t, body.initialC());
    Face face = body.bottom();
    held = face.isHeld();
    outerC = face.outsideC();
    outerLink = face.washingWPerM2K() * r[r.length - 1];
    tissue = face instanceof Face.Perfused perfused ? perfused : new Face.Perfused(0, 0, 0);
    tissueM = body.tissueM(z);
    if (held) {
      t[t.length - 1] = outerC;
    }
  }

  /** Temperatures at a distance from the wall of the bore, at the end of every interval. */
  public ColumnSeries run(List<HeatStretch> stretches, double depthMm, double everyS) {
    Check.positive("Output interval", "s", everyS);
    double at = boreM + depthMm * 1e-3;
    if (!(depthMm >= 0 && at <= r[r.length - 1] * (1 + 1e-9))) {
      throw new IllegalArgumentException("Probe at " + depthMm + " mm lies outside the layers");
    }
    int node = 0;
    while (node + 2 < r.length && r[node + 1] <= at + 1e-12) {
      node++;
    }
    double share = Math.min(1, (at - r[node]) / (r[node + 1] - r[node]));
    double duration = stretches.stream().mapToDouble(HeatStretch::durationS).sum();
    TimedOutputs out = new TimedOutputs(3, everyS, duration);
    Recorder recorder = new Recorder(out, node, share);
    out.start(recorder.read());
    double startS = 0;
    for (HeatStretch stretch : stretches) {
      run(stretch, startS, recorder);
      startS += stretch.durationS();
    }
    return new ColumnSeries(
        out.timesS,
        out.first(1),
        out.values[1],
        out.values[2],
        new double[] {recorder.peakProbe},
        recorder.peakWall,
        recorder.steps);
  }

  /** What is kept of a run. */
  private final class Recorder {
    private final TimedOutputs out;
    private final int node;
    private final double share;
    private final double[] now = new double[3];
    private double peakProbe = Double.NEGATIVE_INFINITY;
    private double peakWall = Double.NEGATIVE_INFINITY;
    private int steps;

    Recorder(TimedOutputs out, int node, double share) {
      this.out = out;
      this.node = node;
      this.share = share;
    }

    double[] read() {
      now[0] = t[node] + share * (t[node + 1] - t[node]);
      now[1] = t[0];
      peakProbe = Math.max(peakProbe, now[0]);
      peakWall = Math.max(peakWall, now[1]);
      return now;
    }

    void step(double atS) {
      steps++;
      out.step(read(), atS);
    }
  }

  private void run(HeatStretch stretch, double startS, Recorder recorder) {
    double period = stretch.onS() + stretch.offS();
    double tiny = 1e-9 * Math.max(period, 1e-3);
    double doneS = 0;
    for (long cycle = 0; doneS < stretch.durationS() - tiny; cycle++) {
      double onEnd = Math.min(stretch.durationS(), cycle * period + stretch.onS());
      if (onEnd - doneS > tiny) {
        phase(startS + doneS, onEnd - doneS, stretch.fluxWPerM2(), stretch.spotWhileOn(), recorder);
        doneS = onEnd;
      }
      double offEnd = Math.min(stretch.durationS(), (cycle + 1) * period);
      if (offEnd - doneS > tiny) {
        phase(startS + doneS, offEnd - doneS, 0, stretch.spotWhileOff(), recorder);
        doneS = offEnd;
      }
    }
  }

  private void phase(
      double fromS, double lengthS, double flux, Coolant coolant, Recorder recorder) {
    double longest = lengthS > 100 * LONGEST_OF_LONG_S ? LONGEST_OF_LONG_S : LONGEST_STEP_S;
    int steps = (int) Math.max(STEPS_A_PHASE, Math.ceil(lengthS / longest));
    double step = lengthS / steps;
    for (int s = 0; s < steps; s++) {
      step(step, flux, coolant);
      recorder.step(fromS + (s + 1) * step);
    }
  }

  private void step(double seconds, double flux, Coolant coolant) {
    int last = held ? t.length - 2 : t.length - 1;
    double carried = 0;
    for (int j = 0; j <= last; j++) {
      double inner = j > 0 ? seconds * link[j - 1] : seconds * coolant.coefficientWPerM2K() * boreM;
      double outer = seconds * (j + 1 < t.length ? link[j] : outerLink);
      double value = capacity[j] * t[j];
      if (j == 0) {
        value += seconds * flux * boreM + inner * coolant.temperatureC();
      } else {
        value += inner * carried;
      }
      if (j == last) {
        value += outer * outerC;
      }
      double diagonal = capacity[j] + inner + outer - (j > 0 ? inner * upper[j - 1] : 0);
      upper[j] = outer / diagonal;
      carried = value / diagonal;
      t[j] = carried;
    }
    for (int j = last - 1; j >= 0; j--) {
      t[j] += upper[j] * t[j + 1];
    }
    for (int j = 0; j <= last; j++) {
      if (tissueM[j] > 0 && t[j] <= Face.Perfused.stopsAboveC()) {
        double kept = tissue.keptShare(tissueM[j] * r[j], capacity[j], seconds);
        t[j] = tissue.bloodC() + kept * (t[j] - tissue.bloodC());
      }
    }
  }

  /** Heat above 0 degC in a metre of the wall, J/m. */
  public double heatJPerM() {
    double sum = 0;
    for (int j = 0; j < t.length; j++) {
      sum += 2 * Math.PI * capacity[j] * t[j];
    }
    return sum;
  }
}
