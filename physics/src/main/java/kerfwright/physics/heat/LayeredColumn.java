package kerfwright.physics.heat;

import java.util.Arrays;

/**
 * Computes the temperature below the middle of the spot on one line of nodes: a quick stand-in for
 * {@link AxisymmetricConduction} in search and sampling.
 *
 * <pre>
 *   T = U + W
 *   U   the uncut body with its whole top washed by the outer coolant: plane, exact in one dimension
 *   W   what the spot changes, along a tube that widens below the floor:
 *       rho c A dW/dt = d/dx (k A dW/dx) - A' W / (x/k + 1/h_out)
 *       A(x) = pi s (s + x),  s = sqrt(x^2 + a^2),  never above pi R^2
 *   floor:  -k dW/dx = q + h (T_coolant - U - W) + k dU/dx
 *
 *   x   depth below the floor, m      a   radius of the spot, m      R   radius of the body, m
 *   q   heat flux into the floor      h   coefficient on the floor   h_out  on the top outside
 * </pre>
 *
 * <p>Where the law of area comes from: it is the one that makes the steady temperature on the axis
 * below a round source on a half-space exact (Carslaw and Jaeger 10.5: (q/k)(sqrt(x^2 + a^2) - x)).
 * The loss term is what warmth loses sideways to the washed surface; far from the spot it turns the
 * 1/x of an insulated half-space into the 1/x^2 of one held cold, as it should. Neither has a
 * fitted number.
 *
 * <p>Valid for spots of 0.5 to 3 mm and depths of 2 to 5 mm; the tests state how far it may lie
 * from the axisymmetric solution. Leaves out: sideways spreading in a layer that conducts much
 * better than the one below, the cavity wall (taken as the washed top, at floor level), a side that
 * is not insulated. Strokes and pauses that follow each other within {@link #AVERAGED_PERIOD_S} are
 * averaged; the ripple of the floor temperature is then lost, the pulp does not notice.
 *
 * <p>Holds its working arrays for reuse; belongs to one thread. Nothing is allocated in a time
 * step.
 */
public final class LayeredColumn {
  /** Strokes and pauses shorter than this together are averaged. */
  public static final double AVERAGED_PERIOD_S = 0.25;

  private static final double LONGEST_STEP_S = 0.5;
  private static final int STEPS_A_PHASE = 6;
  private static final int CELLS = 26;

  private final ColumnChain plane = new ColumnChain();
  private final ColumnChain spot = new ColumnChain();
  private double[] z = new double[0];
  private double[] k = new double[0];
  private double[] c = new double[0];
  private double spotRadiusM;
  private double bodyRadiusM;
  private double bottomWash;
  private boolean bottomHeld;
  private double floorM;
  private int row;
  private Coolant outside = Coolant.NONE;
  private Coolant onSpot = Coolant.NONE;
  private double flux;

  /** Runs a schedule; depths of the probes below the uncut top, on the axis. */
  public ColumnSeries run(
      HeatBody body, HeatSchedule schedule, double[] probeDepthsMm, double outputEveryS) {
    Require.positive("Output interval", "s", outputEveryS);
    build(body, schedule, probeDepthsMm);
    ColumnRecorder out =
        new ColumnRecorder(probeDepthsMm, z, outputEveryS, schedule.durationS(), body.initialC());
    double startS = 0;
    for (HeatStretch stretch : schedule.stretches()) {
      run(stretch, startS, out);
      startS += stretch.durationS();
    }
    return out.series();
  }

  private void build(HeatBody body, HeatSchedule schedule, double[] probeDepthsMm) {
    double depth = body.depthMm() * 1e-3;
    double cut = schedule.cutDepthMm() * 1e-3;
    spotRadiusM = Math.min(schedule.spotRadiusMm(), body.radiusMm()) * 1e-3;
    bodyRadiusM = body.radiusMm() * 1e-3;
    double[] inner = new double[body.layers().size() - 1 + probeDepthsMm.length];
    double bottom = 0;
    for (int l = 0; l < body.layers().size() - 1; l++) {
      bottom += body.layers().get(l).thicknessMm() * 1e-3;
      inner[l] = bottom;
    }
    for (int p = 0; p < probeDepthsMm.length; p++) {
      double at = probeDepthsMm[p] * 1e-3;
      if (!(at >= 0 && at <= depth * (1 + 1e-9))) {
        throw new IllegalArgumentException(
            "Probe at depth " + probeDepthsMm[p] + " mm lies outside 0 to " + depth * 1e3 + " mm");
      }
      inner[body.layers().size() - 1 + p] = at;
    }
    double[] breaks = Spacing.breaks(depth, inner);
    double fine = 0.2 * Math.min(spotRadiusM, 1e-3);
    z =
        Spacing.lines(
            breaks,
            Math.max(CELLS, 2 * breaks.length),
            at -> 1 / (fine + 0.25 * Math.max(0, at - cut)));
    int cells = z.length - 1;
    if (cut >= z[cells - 1]) {
      throw new IllegalArgumentException(
          "The cut goes down "
              + cut * 1e3
              + " mm; it must stay above "
              + z[cells - 1] * 1e3
              + " mm of the body's "
              + body.depthMm()
              + " mm");
    }
    k = k.length < cells ? new double[cells] : k;
    c = c.length < cells ? new double[cells] : c;
    int layer = 0;
    double layerEnd = body.layers().get(0).thicknessMm() * 1e-3;
    for (int j = 0; j < cells; j++) {
      while (0.5 * (z[j] + z[j + 1]) > layerEnd && layer < body.layers().size() - 1) {
        layer++;
        layerEnd += body.layers().get(layer).thicknessMm() * 1e-3;
      }
      k[j] = body.layers().get(layer).conductivityWPerMK();
      c[j] = body.layers().get(layer).volumetricHeatJPerM3K();
    }
    bottomHeld = body.bottom().isHeld();
    bottomWash = body.bottom().washingWPerM2K();
    plane.size(cells + 1);
    spot.size(cells + 1);
    plane.first = 0;
    plane.last = bottomHeld ? cells - 1 : cells;
    spot.last = plane.last;
    Arrays.fill(plane.t, body.initialC());
    Arrays.fill(spot.t, 0);
    Arrays.fill(plane.mass, 0);
    Arrays.fill(plane.loss, 0);
    Arrays.fill(plane.source, 0);
    Arrays.fill(spot.source, 0);
    for (int j = 0; j < cells; j++) {
      double half = 0.5 * c[j] * (z[j + 1] - z[j]);
      plane.mass[j] += half;
      plane.mass[j + 1] += half;
      plane.link[j] = k[j] / (z[j + 1] - z[j]);
    }
    if (!bottomHeld) {
      plane.link[cells] = bottomWash;
    }
    plane.source[plane.last] = plane.link[plane.last] * body.bottom().outsideC();
    if (bottomHeld) {
      plane.t[cells] = body.bottom().outsideC();
    }
    row = 0;
    floorM = 0;
    spot.first = 0;
  }

  private void run(HeatStretch stretch, double startS, ColumnRecorder out) {
    outside = stretch.outside();
    plane.loss[0] = outside.coefficientWPerM2K();
    plane.source[0] = outside.coefficientWPerM2K() * outside.temperatureC();
    double period = stretch.onS() + stretch.offS();
    if (stretch.onS() > 0
        && stretch.offS() > 0
        && period < AVERAGED_PERIOD_S
        && stretch.durationS() > 2 * period) {
      averaged(stretch, startS, out);
      return;
    }
    double tiny = 1e-9 * Math.max(period, 1e-3);
    double doneS = 0;
    for (long cycle = 0; doneS < stretch.durationS() - tiny; cycle++) {
      double onEnd = Math.min(stretch.durationS(), cycle * period + stretch.onS());
      if (onEnd - doneS > tiny) {
        flux = stretch.fluxWPerM2();
        onSpot = stretch.spotWhileOn();
        phase(startS + doneS, onEnd - doneS, stretch.feedMmPerS() * 1e-3, out);
        doneS = onEnd;
      }
      double offEnd = Math.min(stretch.durationS(), (cycle + 1) * period);
      if (offEnd - doneS > tiny) {
        flux = 0;
        onSpot = stretch.spotWhileOff();
        phase(startS + doneS, offEnd - doneS, 0, out);
        doneS = offEnd;
      }
    }
  }

  /** Means over a period: flux, feed, and the two coolants weighted by time and coefficient. */
  private void averaged(HeatStretch stretch, double startS, ColumnRecorder out) {
    double share = stretch.cuttingS() / stretch.durationS();
    flux = share * stretch.fluxWPerM2();
    double on = share * stretch.spotWhileOn().coefficientWPerM2K();
    double off = (1 - share) * stretch.spotWhileOff().coefficientWPerM2K();
    double h = on + off;
    double mean =
        h == 0
            ? 0
            : (on * stretch.spotWhileOn().temperatureC()
                    + off * stretch.spotWhileOff().temperatureC())
                / h;
    onSpot = new Coolant(h, mean);
    phase(startS, stretch.durationS(), share * stretch.feedMmPerS() * 1e-3, out);
  }

  private void phase(double fromS, double lengthS, double feedMPerS, ColumnRecorder out) {
    int steps = (int) Math.max(STEPS_A_PHASE, Math.ceil(lengthS / LONGEST_STEP_S));
    double step = lengthS / steps;
    double startM = floorM;
    plane.factor(0.5 * step);
    shape();
    spot.factor(0.5 * step);
    for (int s = 0; s < steps; s++) {
      if (feedMPerS > 0) {
        lower(startM + feedMPerS * (s + 0.5) * step);
        shape();
        spot.factor(0.5 * step);
      }
      if (s < 2) {
        plane.halfStep();
        drive();
        spot.halfStep();
        plane.halfStep();
        drive();
        spot.halfStep();
      } else {
        plane.fullStep();
        drive();
        spot.fullStep();
      }
      double cutTo = startM + feedMPerS * (s + 1) * step;
      out.step(plane.t, spot.t, row, floorM, cutTo, fromS + (s + 1) * step, underFloor());
    }
    if (feedMPerS > 0) {
      lower(startM + feedMPerS * lengthS);
    }
  }

  /** The undisturbed body's temperature at the floor. */
  private double underFloor() {
    double share = (floorM - z[row]) / (z[row + 1] - z[row]);
    return plane.t[row] + share * (plane.t[row + 1] - plane.t[row]);
  }

  /** What flows into the tube at the floor beside its own loss. */
  private void drive() {
    double h = onSpot.coefficientWPerM2K();
    double undisturbed =
        floorM == 0
            ? outside.coefficientWPerM2K() * (outside.temperatureC() - plane.t[0])
            : plane.link[row] * (plane.t[row] - plane.t[row + 1]);
    double in = flux + h * (onSpot.temperatureC() - underFloor()) - undisturbed;
    spot.source[row] = spotRadiusM * spotRadiusM * in;
  }

  /** Moves the floor node along the temperature it finds. */
  private void lower(double targetM) {
    while (targetM > floorM) {
      double next = z[row + 1];
      if (next - targetM < 0.05 * (next - z[row])) {
        spot.source[row] = 0;
        row++;
        spot.first = row;
        floorM = Math.max(z[row], floorM);
        if (floorM >= targetM) {
          return;
        }
      } else {
        double share = (targetM - floorM) / (next - floorM);
        spot.t[row] += share * (spot.t[row + 1] - spot.t[row]);
        floorM = targetM;
      }
    }
  }

  /** Masses, links and losses of the tube below the floor; all divided by pi. */
  private void shape() {
    double a2 = spotRadiusM * spotRadiusM;
    double full = bodyRadiusM * bodyRadiusM;
    double h = outside.coefficientWPerM2K();
    int cells = z.length - 1;
    double x = 0;
    double s = spotRadiusM;
    double resistance = 0;
    double volume = s * a2 / 3;
    double area = a2;
    double massAbove = 0;
    double lossAbove = h > 0 ? 0 : 0;
    for (int j = row; j < cells; j++) {
      double xNext = z[j + 1] - floorM;
      double dx = xNext - x;
      double sNext = Math.sqrt(xNext * xNext + a2);
      double volumeNext = (xNext * xNext * xNext + sNext * sNext * sNext) / 3 + a2 * xNext;
      double areaNext = Math.min(full, sNext * (sNext + xNext));
      double perLength = a2 / ((xNext - sNext) - (x - s));
      spot.link[j] = k[j] * Math.min(perLength, full / dx);
      double halfMass = 0.5 * c[j] * Math.min(volumeNext - volume, full * dx);
      double halfLoss = 0;
      if (h > 0) {
        halfLoss = 0.5 * (areaNext - area) / (resistance + 0.5 * dx / k[j] + 1 / h);
      }
      resistance += dx / k[j];
      spot.mass[j] = massAbove + halfMass;
      spot.loss[j] = lossAbove + halfLoss;
      massAbove = halfMass;
      lossAbove = halfLoss;
      x = xNext;
      s = sNext;
      volume = volumeNext;
      area = areaNext;
    }
    if (!bottomHeld) {
      spot.mass[cells] = massAbove;
      spot.loss[cells] = lossAbove;
      spot.link[cells] = bottomWash * area;
    }
    spot.loss[row] += a2 * onSpot.coefficientWPerM2K();
  }
}
