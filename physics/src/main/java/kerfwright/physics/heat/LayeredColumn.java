package kerfwright.physics.heat;

import java.util.Arrays;

/**
 * Computes the temperature below the middle of the spot on one line of nodes: a quick stand-in for
 * {@link AxisymmetricConduction} in search and sampling.
 *
 * <pre>
 *   T = U + W,   W(x) = P(x) - phi P(y) + (a/R)^2 phi P(y_R)
 *   U     the uncut body with its whole top washed by the outer coolant: plane
 *   P     the body below the floor if the spot were its whole top: plane
 *   phi   (x/k + 1/h_out) / (y/k + 1/h_out); one where the top outside is dry
 *   floor of P:  -k dP/dx = q + h (T_coolant - U - W) + k dU/dx - h_out (P - W)
 *
 *   x   depth below the floor, m      a   radius of the spot, m      R   radius of the body, m
 *   y   sqrt(x^2 + a^2), to the rim   q   heat flux into the floor   h   coefficient on the floor
 * </pre>
 *
 * <p>Where W comes from: below the middle of a round source the temperature is that of a source
 * over the whole plane, less the same at the distance of the rim. This is exact at all times on an
 * insulated half-space (Carslaw and Jaeger 10.5, where it reads ierfc(x/..) - ierfc(y/..)); with
 * the plane outside held cold the second term carries the factor x/y; phi joins the two. The last
 * term, y_R = sqrt(x^2 + (2R - a)^2), is what an insulated side throws back. In layers, y is the
 * depth that warmth reaches in the same time as along the slanting path.
 *
 * <p>The rim counts as nearer than a in two cases: under strokes without water on a floor amid
 * washed surroundings by up to a quarter (share of strokes times Bi/(1 + Bi), Bi = h a/k), and at
 * the bottom of a cavity d deep by sqrt((1 + a/(a + d))/2), because warmth then also spreads into
 * what stands beside the cavity: a full space takes up twice what a half-space does (less so as far
 * as the first case holds, for then the wall of the cavity is cold). These two joins are our own;
 * the tests show how far they carry.
 *
 * <p>Valid for spots of 0.5 to 3 mm and depths of 2 to 5 mm; the tests state how far it may lie
 * from the axisymmetric solution. Leaves out: sideways spreading in a layer that conducts much
 * better than the one below, where blood stands still beside the axis, the cavity wall (taken as
 * the washed top, at floor level), a side that is not insulated. With less than 2 mm over the probe
 * it may stay too cool for seconds after a stroke, by a twentieth of its greatest answer. Strokes
 * and pauses are followed one by one: averaging them would lose a tenth and more of what reaches
 * the pulp, because water then seems to find a warmer floor than it does.
 *
 * <p>Holds its working arrays for reuse; belongs to one thread. Nothing is allocated in a time
 * step.
 */
public final class LayeredColumn {
  /** Half of realistic cases lie nearer than this to the axisymmetric solution at the pulp. */
  public static final double MEDIAN_DIFFERENCE_K = 0.15;

  /** Nine of ten realistic cases lie nearer than this. */
  public static final double USUAL_DIFFERENCE_K = 0.75;

  /** Forty-nine of fifty lie nearer than this; the rest are narrow, hot and deep cavities. */
  public static final double RARE_DIFFERENCE_K = 2.5;

  private static final double LONGEST_STEP_S = 0.5;
  private static final int STEPS_A_PHASE = 5;
  private static final int STEPS_A_SHORT_PHASE = 2;
  private static final double SHORT_PHASE_S = 0.6;

  /**
   * How much nearer the rim counts when all outside a steadily heated floor is held cold: fits the
   * closed form (2q / pi k)(a - x arctan(a / x)) within 20 % from the floor to 4 a.
   */
  private static final double COLD_RIM = 0.25;

  private final ColumnChain plane = new ColumnChain();
  private final ColumnChain spot = new ColumnChain();
  private final ColumnGrid grid = new ColumnGrid();
  private final SpotReading atFloor = new SpotReading();
  private final SpotReading atTissue = new SpotReading();
  private final ColumnBlood blood = new ColumnBlood();

  /** Counts every change of floor, rim or coolant outside. */
  private int shape;

  private double shapedFloorM;
  private double shapedRimM;
  private Coolant shapedOutside = Coolant.NONE;
  private double coldRim;
  private double rimM;
  private double sideShare;
  private double sideDistanceM;
  private double spotRadiusM;
  private double floorM;

  /** How far the cut has got; the floor node may be a sliver ahead. */
  private double cutM;

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
        new ColumnRecorder(
            probeDepthsMm, grid, outputEveryS, schedule.durationS(), body.initialC());
    double startS = 0;
    for (HeatStretch stretch : schedule.stretches()) {
      run(stretch, startS, out);
      startS += stretch.durationS();
    }
    return out.series();
  }

  private void build(HeatBody body, HeatSchedule schedule, double[] probeDepthsMm) {
    spotRadiusM = Math.min(schedule.spotRadiusMm(), body.radiusMm()) * 1e-3;
    double share = spotRadiusM / (body.radiusMm() * 1e-3);
    sideShare = share * share;
    sideDistanceM = 2e-3 * body.radiusMm() - spotRadiusM;
    grid.build(body, schedule.cutDepthMm() * 1e-3, spotRadiusM, probeDepthsMm);
    int cells = grid.cells();
    boolean bottomHeld = body.bottom().isHeld();
    for (ColumnChain chain : new ColumnChain[] {plane, spot}) {
      chain.size(cells + 1);
      chain.first = 0;
      chain.last = bottomHeld ? cells - 1 : cells;
      grid.shape(chain);
      if (!bottomHeld) {
        chain.link[cells] = body.bottom().washingWPerM2K();
      }
      Arrays.fill(chain.loss, 0);
      Arrays.fill(chain.source, 0);
    }
    Arrays.fill(plane.t, body.initialC());
    Arrays.fill(spot.t, 0);
    plane.source[plane.last] = plane.link[plane.last] * body.bottom().outsideC();
    if (bottomHeld) {
      plane.t[cells] = body.bottom().outsideC();
    }
    blood.build(body, grid, plane.mass);
    coldRim = 0;
    row = 0;
    floorM = 0;
    cutM = 0;
    shape++;
  }

  private void run(HeatStretch stretch, double startS, ColumnRecorder out) {
    outside = stretch.outside();
    plane.loss[0] = outside.coefficientWPerM2K();
    plane.source[0] = outside.coefficientWPerM2K() * outside.temperatureC();
    double period = stretch.onS() + stretch.offS();
    if (stretch.onS() > 0) {
      double dry =
          Math.max(0, outside.coefficientWPerM2K() - stretch.spotWhileOn().coefficientWPerM2K());
      double biot = dry * spotRadiusM / grid.k[row];
      coldRim = biot / (1 + biot) * stretch.onS() / period;
    }
    double tiny = 1e-9 * Math.max(period, 1e-3);
    double doneS = 0;
    for (long cycle = 0; doneS < stretch.durationS() - tiny; cycle++) {
      double onEnd = Math.min(stretch.durationS(), cycle * period + stretch.onS());
      if (onEnd - doneS > tiny) {
        flux = stretch.fluxWPerM2();
        onSpot = stretch.spotWhileOn();
        phase(
            startS + doneS,
            whole(onEnd - doneS, stretch.onS(), tiny),
            stretch.feedMmPerS() * 1e-3,
            out);
        doneS = onEnd;
      }
      double offEnd = Math.min(stretch.durationS(), (cycle + 1) * period);
      if (offEnd - doneS > tiny) {
        flux = 0;
        onSpot = stretch.spotWhileOff();
        phase(startS + doneS, whole(offEnd - doneS, stretch.offS(), tiny), 0, out);
        doneS = offEnd;
      }
    }
  }

  /** A whole phase is exactly as long as the one before, so that the same factors serve. */
  private static double whole(double lengthS, double wholeS, double tiny) {
    return Math.abs(lengthS - wholeS) < tiny ? wholeS : lengthS;
  }

  private void phase(double fromS, double lengthS, double feedMPerS, ColumnRecorder out) {
    int least = lengthS < SHORT_PHASE_S ? STEPS_A_SHORT_PHASE : STEPS_A_PHASE;
    int steps = (int) Math.max(least, Math.ceil(lengthS / LONGEST_STEP_S));
    double step = lengthS / steps;
    double doneS = march(fromS, 0, step / 8, 2, true, feedMPerS, out);
    doneS = march(fromS, doneS, step / 4, 1, false, feedMPerS, out);
    doneS = march(fromS, doneS, step / 2, 1, false, feedMPerS, out);
    march(fromS, doneS, step, steps - 1, false, feedMPerS, out);
    lower(cutM);
  }

  private double march(
      double phaseS,
      double doneS,
      double step,
      int steps,
      boolean damped,
      double feedMPerS,
      ColumnRecorder out) {
    double startM = cutM;
    blood.prepare(step);
    plane.factor(0.5 * step);
    shape();
    spot.factor(0.5 * step);
    for (int s = 0; s < steps; s++) {
      if (feedMPerS > 0) {
        lower(startM + feedMPerS * (s + 0.5) * step);
        shape();
        spot.factorTop();
      }
      if (damped) {
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
      bleed();
      cutM = startM + feedMPerS * (s + 1) * step;
      out.step(this, cutM, phaseS + doneS + (s + 1) * step);
    }
    return doneS + steps * step;
  }

  /** Blood takes its share of the step, unless the top of the tissue is too warm for it to flow. */
  private void bleed() {
    int top = blood.first();
    if (top > row
        && top <= plane.last
        && (plane.t[top] + spot.t[top] <= Face.Perfused.STOPS_C
            || plane.t[top] + spotPart(grid.z[top], atTissue) <= Face.Perfused.STOPS_C)) {
      blood.step(plane.t, spot.t, Math.max(top, row + 2), plane.last);
    }
  }

  /** Where the floor stands. */
  double floorM() {
    return floorM;
  }

  double floorC() {
    return underFloor() + spotPart(floorM, atFloor);
  }

  /** Temperature at a depth that lies in an element. */
  double temperatureC(double depthM, int element, SpotReading reading) {
    double share = (depthM - grid.z[element]) / (grid.z[element + 1] - grid.z[element]);
    double undisturbed = plane.t[element] + share * (plane.t[element + 1] - plane.t[element]);
    return undisturbed + spotPart(depthM, reading);
  }

  /** The undisturbed body's temperature at the floor. */
  private double underFloor() {
    double share = (floorM - grid.z[row]) / (grid.z[row + 1] - grid.z[row]);
    return plane.t[row] + share * (plane.t[row + 1] - plane.t[row]);
  }

  /** What flows into the tube at the floor beside its own loss. */
  private void drive() {
    double h = onSpot.coefficientWPerM2K();
    double undisturbed =
        floorM == 0
            ? outside.coefficientWPerM2K() * (outside.temperatureC() - plane.t[0])
            : plane.link[row] * (plane.t[row] - plane.t[row + 1]);
    double lost = outside.coefficientWPerM2K() - h;
    spot.source[row] =
        flux
            + h * (onSpot.temperatureC() - underFloor())
            - undisturbed
            - lost * (spot.t[row] - spotPart(floorM, atFloor));
  }

  /** Moves the floor node along the temperature it finds. */
  private void lower(double targetM) {
    while (targetM > floorM) {
      double next = grid.z[row + 1];
      if (next - targetM < 0.05 * (next - grid.z[row])) {
        spot.source[row] = 0;
        spot.loss[row] = 0;
        row++;
        spot.first = row;
        floorM = Math.max(grid.z[row], floorM);
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

  /** Masses, links and losses below the floor. */
  private void shape() {
    double left = grid.z[row + 1] - floorM;
    double half = 0.5 * grid.c[row] * left;
    spot.mass[row] = half;
    spot.link[row] = grid.k[row] / left;
    spot.mass[row + 1] =
        half
            + 0.5
                * (row + 2 < grid.z.length
                    ? grid.c[row + 1] * (grid.z[row + 2] - grid.z[row + 1])
                    : 0);
    spot.loss[row] = onSpot.coefficientWPerM2K();
    double hole = 1 - Math.sqrt(0.5 + 0.5 * spotRadiusM / (spotRadiusM + floorM));
    rimM = spotRadiusM * (1 - COLD_RIM * coldRim) * (1 - hole * (1 - coldRim));
    if (floorM != shapedFloorM || rimM != shapedRimM || !outside.equals(shapedOutside)) {
      shape++;
      shapedFloorM = floorM;
      shapedRimM = rimM;
      shapedOutside = outside;
    }
  }

  /** W at a depth: what the spot changes on the axis. */
  private double spotPart(double depthM, SpotReading reading) {
    if (!reading.isFor(shape)) {
      reading.begin(shape);
      double x = depthM - floorM;
      int j = row;
      if (x > 1e-9) {
        while (j + 2 < grid.z.length && grid.z[j + 1] < depthM) {
          j++;
        }
        reading.put(SpotReading.Term.PLAIN, 1, j, share(j, depthM));
      } else {
        reading.put(SpotReading.Term.PLAIN, 1, row, 0);
      }
      atDistance(reading, SpotReading.Term.RIM, j, depthM, rimM);
      atDistance(reading, SpotReading.Term.SIDE, j, depthM, sideDistanceM);
    }
    return reading.of(spot.t, sideShare);
  }

  /**
   * P where warmth gets to in the time it takes along the slant from a depth to a ring, times phi.
   */
  private void atDistance(
      SpotReading reading, SpotReading.Term term, int element, double depthM, double ringM) {
    double x = depthM - floorM;
    double h = outside.coefficientWPerM2K();
    double fromFloor = grid.delay(row, floorM);
    double wanted;
    double phi;
    if (x <= 1e-9) {
      wanted = fromFloor + ringM / grid.rootDiffusivity[row];
      phi = 1 / (h * ringM / grid.k[row] + 1);
    } else {
      double longer = Math.sqrt(x * x + ringM * ringM) / x;
      double resistance = grid.resist(element, depthM) - grid.resist(row, floorM);
      wanted = fromFloor + (grid.delay(element, depthM) - fromFloor) * longer;
      phi = (h * resistance + 1) / (h * resistance * longer + 1);
    }
    if (wanted >= grid.wholeDelay()) {
      reading.put(term, phi, grid.cells(), 0);
      return;
    }
    int j = grid.elementOfDelay(element, wanted);
    reading.put(term, phi, j, share(j, grid.depthOfDelayM(j, wanted)));
  }

  private double share(int element, double depthM) {
    double top = element == row ? floorM : grid.z[element];
    return (depthM - top) / (grid.z[element + 1] - top);
  }
}
