package kerfwright.physics.heat.field;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.quantity.Check;

/**
 * Computes the temperature in a layered cylinder whose top is heated in a round spot, cooled around
 * it, and cut down into a cavity.
 *
 * <pre>
 *   rho c dT/dt = (1/r) d/dr (r k dT/dr) + d/dz (k dT/dz)
 *   floor of the spot, cutting:   -k dT/dz = q + h_on (T_on - T), and the floor goes down at speed v
 *   floor of the spot, pause:     -k dT/dz = h_off (T_off - T)
 *   top outside, cavity wall:     heat leaves at h_out (T - T_out), always
 *
 *   T      temperature, degC                 r, z   radius and depth, m        t   time, s
 *   k      conductivity, W/(m K)             rho c  volumetric heat, J/(m3 K)
 *   q      heat flux into the floor, W/m2    h      heat transfer coefficient, W/(m2 K)
 *   v      feed, m/s; what is removed takes its heat along
 * </pre>
 *
 * <p>Method: finite volumes around the nodes of a mesh with every layer boundary on a line, so heat
 * is conserved to rounding; alternating directions (Peaceman and Rachford), second order in space
 * and time; after each switch two steps in damped form (each half step implicit in one direction
 * after the other), which takes the edge off the sudden change (Rannacher). The floor cuts partial
 * cells, see {@link CutFloor}. Blood takes its share after each step (first order in the step, and
 * slow: a minute against hundredths of a second). Steps end at every switch and are never longer
 * than asked; on graded meshes the first one after a switch is divided 1/16, 1/16, 1/8, 1/4, 1/2.
 *
 * <p>Valid for: perfect contact of the layers, properties that do not change with temperature.
 * Leaves out: boiling of the coolant, radiation, the direction of dentine tubules, any shape but
 * the round cavity. With steps above about 20 ms the splitting into directions shows where a layer
 * of metal conducts much better than its neighbours.
 *
 * <p>Sources: Carslaw HS, Jaeger JC. Conduction of Heat in Solids, 2nd ed. 1959 (equations, closed
 * forms of the tests); Peaceman DW, Rachford HH. J Soc Ind Appl Math 1955;3:28-41; Rannacher R.
 * Numer Math 1984;43:309-327 (both from memory).
 *
 * <p>Holds its working arrays; belongs to one thread. Nothing is allocated in a time step.
 */
public final class AxisymmetricConduction {
  private static final int DAMPED_STEPS = 2;

  /** On graded meshes the first step of a phase is cut into halves so many times. */
  private static final int START_LEVELS = 4;

  private final HeatBody body;
  private final HeatSchedule schedule;
  private final HeatMesh mesh;
  private final HeatGrid grid;
  private final CutFloor floor;
  private final DepthSweep depth;
  private final RadialSweep radial;
  private final Perfusion perfusion;
  private final ProbeReader[] readers;
  private final double[][] t;
  private final double[][] g;

  private EnergyLedger ledger = new EnergyLedger();
  private SeriesRecorder recorder;
  private double nowS;

  /** Where the cut would have the floor, ahead of or behind the floor in the mesh. */
  private double wantedM;

  private double flux;
  private double feedMPerS;
  private Coolant onSpot = Coolant.NONE;
  private Coolant outside = Coolant.NONE;
  private double phaseStartM;
  private double phaseStartS;
  private double phaseS;
  private double stepS;
  private int damped;

  /** Prepares a computation on a given mesh. */
  public AxisymmetricConduction(
      HeatBody body, HeatSchedule schedule, List<HeatProbe> probes, HeatMesh mesh) {
    this.body = body;
    this.schedule = schedule;
    this.mesh = mesh;
    grid = Meshing.grid(body, schedule, probes, mesh);
    floor = new CutFloor(grid);
    if (schedule.cutDepthMm() * 1e-3 >= floor.deepestM()) {
      throw new IllegalArgumentException(
          "The cut goes down "
              + schedule.cutDepthMm()
              + " mm; on this mesh it must stay above "
              + floor.deepestM() * 1e3
              + " mm of the body's "
              + body.depthMm()
              + " mm");
    }
    depth = new DepthSweep(grid, floor, body);
    radial = new RadialSweep(grid, floor, body);
    perfusion = new Perfusion(body, grid, floor);
    readers = new ProbeReader[probes.size()];
    for (int p = 0; p < readers.length; p++) {
      readers[p] = new ProbeReader(grid, floor, body, probes.get(p));
    }
    t = new double[grid.rows][grid.columns];
    g = new double[grid.rows][grid.columns];
    recorder =
        new SeriesRecorder(
            readers, new ProbeReader(grid, floor, body, HeatProbe.onAxis(0)), floor, 1, 0);
  }

  /** Computes the whole schedule and reads the probes every {@code outputEveryS} seconds. */
  public HeatSeries run(double outputEveryS) {
    return run(outputEveryS, depthM -> body.initialC());
  }

  /** The same from temperatures that differ with depth. */
  public HeatSeries run(double outputEveryS, DoubleUnaryOperator initialCAtDepthM) {
    Check.positive("Output interval", "s", outputEveryS);
    floor.restart();
    ledger = new EnergyLedger();
    nowS = 0;
    wantedM = 0;
    for (int j = 0; j < t.length; j++) {
      Arrays.fill(t[j], initialCAtDepthM.applyAsDouble(grid.z[j]));
    }
    double before = floor.heat(t);
    recorder =
        new SeriesRecorder(
            readers,
            new ProbeReader(grid, floor, body, HeatProbe.onAxis(0)),
            floor,
            outputEveryS,
            schedule.durationS());
    recorder.start(t);
    for (HeatStretch stretch : schedule.stretches()) {
      run(stretch);
    }
    return recorder.series(ledger.close(floor.heat(t) - before), mesh);
  }

  private void run(HeatStretch stretch) {
    double startS = nowS;
    double period = stretch.onS() + stretch.offS();
    double doneS = 0;
    double tiny = 1e-9 * Math.max(period, 1e-3);
    for (long cycle = 0; doneS < stretch.durationS() - tiny; cycle++) {
      double onEnd = Math.min(stretch.durationS(), cycle * period + stretch.onS());
      if (onEnd - doneS > tiny) {
        phase(stretch, true, startS + doneS, onEnd - doneS);
        doneS = onEnd;
      }
      double offEnd = Math.min(stretch.durationS(), (cycle + 1) * period);
      if (offEnd - doneS > tiny) {
        phase(stretch, false, startS + doneS, offEnd - doneS);
        doneS = offEnd;
      }
    }
    nowS = startS + stretch.durationS();
  }

  private void phase(HeatStretch stretch, boolean on, double fromS, double lengthS) {
    int steps = (int) Math.max(1, Math.ceil(lengthS / mesh.stepS() - 1e-6));
    double step = lengthS / steps;
    flux = on ? stretch.fluxWPerM2() : 0;
    feedMPerS = on ? stretch.feedMmPerS() * 1e-3 : 0;
    onSpot = on ? stretch.spotWhileOn() : stretch.spotWhileOff();
    outside = stretch.outside();
    advance(wantedM);
    phaseStartM = wantedM;
    phaseStartS = fromS;
    phaseS = 0;
    damped = DAMPED_STEPS;
    stepS = 0;
    if (mesh.graded()) {
      march(step / (1 << START_LEVELS), 2);
      for (int level = START_LEVELS - 1; level > 0; level--) {
        march(step / (1 << level), 1);
      }
      march(step, steps - 1);
    } else {
      march(step, steps);
    }
  }

  private void march(double step, int steps) {
    depth.prepare(0.5 * step, flux, onSpot, outside);
    radial.prepare(0.5 * step, outside);
    if (damped == 0) {
      rescale(step / stepS);
    }
    stepS = step;
    double startS = phaseS;
    for (int s = 0; s < steps; s++) {
      if (feedMPerS > 0) {
        int rowBefore = floor.row;
        if (advance(phaseStartM + feedMPerS * (startS + (s + 0.5) * step))) {
          depth.floorMoved();
          radial.floorMoved();
          if (damped == 0) {
            radial.refresh(t, g, rowBefore);
          }
        }
      }
      if (damped > 0) {
        dampedHalfStep(0.5 * step);
        dampedHalfStep(0.5 * step);
        damped--;
      } else {
        fullStep(step);
      }
      ledger.blood(perfusion.step(t, g, step));
      phaseS = startS + (s + 1) * step;
      wantedM = phaseStartM + feedMPerS * phaseS;
      recorder.step(t, phaseStartS + phaseS, wantedM);
    }
  }

  /** The explicit part for another step length: it departs from t in proportion to the step. */
  private void rescale(double ratio) {
    for (int j = 0; j < t.length; j++) {
      Lines.rescale(t[j], g[j], ratio);
    }
  }

  private boolean advance(double targetM) {
    if (targetM <= floor.depthM) {
      return false;
    }
    ledger.removed(floor.moveTo(targetM, t));
    return true;
  }

  private void dampedHalfStep(double half) {
    for (int j = 0; j < t.length; j++) {
      System.arraycopy(t[j], 0, g[j], 0, grid.columns);
    }
    depth.solve(t, g, false);
    ledger.along(depth, t, half);
    radial.solve(t, g);
    ledger.along(radial, t, half);
  }

  private void fullStep(double step) {
    ledger.along(radial, t, 0.5 * step);
    depth.solve(t, g, true);
    ledger.along(depth, t, step);
    radial.solve(t, g);
    ledger.along(radial, t, 0.5 * step);
  }
}
