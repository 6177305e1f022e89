package kerfwright.physics.heat.column;

import kerfwright.physics.heat.ColumnSeries;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.quantity.Check;

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

  /**
   * How far a lumping column may lie off at the pulp wall in forty-nine of fifty cases of long
   * work, as a share of the greatest change (at least 1 K).
   */
  public static final double LUMPED_SHARE = 0.03;

  private static final double LONGEST_STEP_S = 0.5;
  private static final int STEPS_A_PHASE = 5;
  private static final int STEPS_A_SHORT_PHASE = 2;
  private static final double SHORT_PHASE_S = 0.6;

  /** Steps of a lumping column: longer as a phase lasts, up to this. */
  private static final double LONGEST_LUMPED_S = 32;

  private static final double OF_ELAPSED = 1.0 / 4;
  private static final double LONG_PHASE_S = 8;

  private final ColumnState state = new ColumnState();
  private final StrokeMean mean = new StrokeMean();
  private final boolean lumping;
  private boolean measuring;

  /** A column that follows every stroke. */
  public LayeredColumn() {
    this(false);
  }

  private LayeredColumn(boolean lumping) {
    this.lumping = lumping;
  }

  /**
   * A column for many samples of long work. It takes longer steps the longer a phase lasts, and
   * lumps strokes that repeat, see {@link StrokeMean}; the first and the last strokes of a stretch
   * are followed one by one. At the pulp wall it stays within {@link #LUMPED_SHARE} of the greatest
   * change from the column that follows every stroke.
   */
  public static LayeredColumn lumping() {
    return new LayeredColumn(true);
  }

  /** Runs a schedule; depths of the probes below the uncut top, on the axis. */
  public ColumnSeries run(
      HeatBody body, HeatSchedule schedule, double[] probeDepthsMm, double outputEveryS) {
    Check.positive("Output interval", "s", outputEveryS);
    state.build(body, schedule, probeDepthsMm);
    ColumnRecorder out =
        new ColumnRecorder(
            probeDepthsMm, state.grid(), outputEveryS, schedule.durationS(), body.initialC());
    double startS = 0;
    for (HeatStretch stretch : schedule.stretches()) {
      run(stretch, startS, out);
      startS += stretch.durationS();
    }
    return out.series();
  }

  private void run(HeatStretch stretch, double startS, ColumnRecorder out) {
    state.wash(stretch);
    double period = stretch.onS() + stretch.offS();
    double tiny = 1e-9 * Math.max(period, 1e-3);
    double doneS = 0;
    boolean lumps = lumping && stretch.onS() > 0 && stretch.offS() > 0;
    long whole = (long) Math.floor(stretch.durationS() / period + 1e-9);
    mean.forget();
    for (long cycle = 0; doneS < stretch.durationS() - tiny; cycle++) {
      if (lumps) {
        long lumped = mean.ready(state.row()) ? cyclesToLump(stretch, cycle, whole - cycle) : 0;
        if (lumped > 0) {
          lump(stretch, lumped, startS + doneS, out);
          cycle += lumped;
          doneS = cycle * period;
        }
        measuring = cycle > 0 && whole - cycle >= 2 + StrokeMean.LEAST + StrokeMean.LAST;
        mean.begin(state.row());
        if (measuring) {
          out.cycle(startS + doneS);
        }
      }
      double onEnd = Math.min(stretch.durationS(), cycle * period + stretch.onS());
      if (onEnd - doneS > tiny) {
        state.load(stretch.fluxWPerM2(), stretch.spotWhileOn());
        mean.phase(true);
        phase(
            startS + doneS,
            whole(onEnd - doneS, stretch.onS(), tiny),
            stretch.feedMmPerS() * 1e-3,
            out);
        doneS = onEnd;
      }
      double offEnd = Math.min(stretch.durationS(), (cycle + 1) * period);
      if (offEnd - doneS > tiny) {
        state.load(0, stretch.spotWhileOff());
        mean.phase(false);
        phase(startS + doneS, whole(offEnd - doneS, stretch.offS(), tiny), 0, out);
        doneS = offEnd;
      }
      if (measuring) {
        mean.end(state.row());
        measuring = false;
      }
    }
  }

  /**
   * As many cycles as go by before the floor comes to other work or the body has warmed much
   * further; the last ones are followed.
   */
  private long cyclesToLump(HeatStretch stretch, long done, long left) {
    long cycles = Math.min(left - StrokeMean.LAST, StrokeMean.GROWTH * done);
    double deeperM = stretch.feedMmPerS() * 1e-3 * stretch.onS();
    if (deeperM > 0) {
      double far = Math.min(StrokeMean.DEEPEST_M, state.sameWorkM());
      cycles = Math.min(cycles, (long) Math.floor(far / deeperM));
    }
    return cycles >= StrokeMean.LEAST ? cycles : 0;
  }

  /** Goes over cycles with what they bring in the mean. */
  private void lump(HeatStretch stretch, long cycles, double fromS, ColumnRecorder out) {
    double period = stretch.onS() + stretch.offS();
    state.settle(mean, stretch);
    state.load(mean.fluxWPerM2(), new Coolant(mean.coefficientWPerM2K(), 0));
    double feed = stretch.feedMmPerS() * 1e-3 * stretch.onS() / period;
    out.mean(state, fromS, period);
    stepwise(fromS, cycles * period, period / 4, feed, out);
    state.restore(mean);
    out.strokes(state);
  }

  /** Steps that grow with the time gone by. */
  private void stepwise(
      double fromS, double lengthS, double first, double feedMPerS, ColumnRecorder out) {
    double doneS = march(fromS, 0, first / 2, 2, true, feedMPerS, out);
    double step = first;
    while (lengthS - doneS > 1e-9 * lengthS) {
      double longest = Math.min(LONGEST_LUMPED_S, OF_ELAPSED * doneS);
      while (2 * step <= longest) {
        step *= 2;
      }
      int steps = (int) Math.floor((lengthS - doneS) / step + 1e-9);
      if (steps == 0) {
        step = lengthS - doneS;
        steps = 1;
      } else if (2 * step <= LONGEST_LUMPED_S) {
        steps =
            Math.min(steps, Math.max(1, (int) Math.ceil((2 * step / OF_ELAPSED - doneS) / step)));
      }
      doneS = march(fromS, doneS, step, steps, false, feedMPerS, out);
    }
    state.lower();
  }

  /** A whole phase is exactly as long as the one before, so that the same factors serve. */
  private static double whole(double lengthS, double wholeS, double tiny) {
    return Math.abs(lengthS - wholeS) < tiny ? wholeS : lengthS;
  }

  private void phase(double fromS, double lengthS, double feedMPerS, ColumnRecorder out) {
    if (lumping && lengthS > LONG_PHASE_S) {
      stepwise(fromS, lengthS, LONGEST_STEP_S / 2, feedMPerS, out);
      return;
    }
    int least = lengthS < SHORT_PHASE_S ? STEPS_A_SHORT_PHASE : STEPS_A_PHASE;
    int steps = (int) Math.max(least, Math.ceil(lengthS / LONGEST_STEP_S));
    double step = lengthS / steps;
    double doneS = march(fromS, 0, step / 8, 2, true, feedMPerS, out);
    doneS = march(fromS, doneS, step / 4, 1, false, feedMPerS, out);
    doneS = march(fromS, doneS, step / 2, 1, false, feedMPerS, out);
    march(fromS, doneS, step, steps - 1, false, feedMPerS, out);
    state.lower();
  }

  private double march(
      double phaseS,
      double doneS,
      double step,
      int steps,
      boolean damped,
      double feedMPerS,
      ColumnRecorder out) {
    double startM = state.cutM();
    state.prepare(step, step > 1.001 * LONGEST_STEP_S);
    for (int s = 0; s < steps; s++) {
      if (feedMPerS > 0) {
        state.deepen(startM + feedMPerS * (s + 0.5) * step);
      }
      if (measuring) {
        mean.add(state.added(), 0.5 * step);
      }
      state.step(damped);
      if (measuring) {
        mean.add(state.added(), 0.5 * step);
        mean.floor(state.metC(), step);
      }
      state.cutTo(startM + feedMPerS * (s + 1) * step);
      out.step(state, state.cutM(), phaseS + doneS + (s + 1) * step);
    }
    return doneS + steps * step;
  }
}
