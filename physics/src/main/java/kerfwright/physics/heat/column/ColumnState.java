package kerfwright.physics.heat.column;

import java.util.Arrays;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;

/**
 * Temperatures of a {@link LayeredColumn} at one time, where its floor stands, and one step of
 * time.
 */
final class ColumnState {
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
  private boolean longStep;
  private boolean inChains;
  private double metC;

  void build(HeatBody body, HeatSchedule schedule, double[] probeDepthsMm) {
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
    inChains = false;
    coldRim = 0;
    row = 0;
    floorM = 0;
    cutM = 0;
    shape++;
  }

  /** What flows over the top outside through a stretch, and how far its strokes meet it dry. */
  void wash(HeatStretch stretch) {
    outside = stretch.outside();
    plane.loss[0] = outside.coefficientWPerM2K();
    plane.source[0] = outside.coefficientWPerM2K() * outside.temperatureC();
    if (stretch.onS() > 0) {
      double dry =
          Math.max(0, outside.coefficientWPerM2K() - stretch.spotWhileOn().coefficientWPerM2K());
      double biot = dry * spotRadiusM / grid.k[row];
      coldRim = biot / (1 + biot) * stretch.onS() / (stretch.onS() + stretch.offS());
    }
  }

  /** What comes to the floor from now on. */
  void load(double fluxWPerM2, Coolant coolant) {
    flux = fluxWPerM2;
    onSpot = coolant;
  }

  /** Steps of one length follow. */
  void prepare(double stepS, boolean isLong) {
    longStep = isLong;
    flow(isLong && flows());
    blood.prepare(stepS);
    plane.factor(0.5 * stepS);
    shape();
    spot.factor(0.5 * stepS);
  }

  /** The floor of the next step. */
  void deepen(double toM) {
    lower(toM);
    shape();
    spot.factorTop();
  }

  /** One step; a damped one is taken in two implicit halves. */
  void step(boolean damped) {
    if (longStep && flows() != inChains) {
      flow(!inChains);
      plane.factor(plane.halfStepS());
      spot.factor(spot.halfStepS());
    }
    if (damped) {
      plane.halfStep();
      drive();
      double before = spot.t[row];
      spot.halfStep();
      double first = metC + spot.t[row] - before;
      plane.halfStep();
      drive();
      before = spot.t[row];
      spot.halfStep();
      metC = 0.5 * (first + metC + spot.t[row] - before);
    } else {
      plane.fullStep();
      drive();
      double before = spot.t[row];
      spot.fullStep();
      metC += 0.5 * (spot.t[row] - before);
    }
    bleed();
  }

  /** The floor as the coolant met it in the step. */
  double metC() {
    return metC;
  }

  /** How far the cut has got. */
  double cutM() {
    return cutM;
  }

  void cutTo(double depthM) {
    cutM = depthM;
  }

  /** Brings the floor to where the cut has got. */
  void lower() {
    lower(cutM);
  }

  /** The node of the floor. */
  int row() {
    return row;
  }

  /** How far the cut may go on in the same work. */
  double sameWorkM() {
    return grid.sameBelowM(row) - cutM;
  }

  /** What the spot adds, at the nodes. */
  double[] added() {
    return spot.t;
  }

  /** Puts the mean of the strokes in the place of their end. */
  void settle(StrokeMean mean, HeatStretch stretch) {
    mean.settle(stretch, spot.t, grid.z, row, floorM, spot.last);
  }

  /** Puts the end of the strokes in the place of their mean. */
  void restore(StrokeMean mean) {
    mean.restore(spot.t, grid.z, row, floorM, spot.last);
  }

  ColumnGrid grid() {
    return grid;
  }

  /** Blood takes its share of the step. */
  private void bleed() {
    if (!longStep && flows()) {
      blood.step(plane.t, spot.t, firstWithBlood(), plane.last);
    }
  }

  /** In long steps blood is part of the chains: taken after each step it would come too late. */
  private void flow(boolean in) {
    if (in != inChains) {
      inChains = in;
      blood.flow(plane, spot, firstWithBlood(), in);
    }
  }

  private int firstWithBlood() {
    return Math.max(blood.first(), row + 2);
  }

  /** Blood flows unless the top of the tissue is too warm for it. */
  private boolean flows() {
    int top = blood.first();
    return top > row
        && top <= plane.last
        && (plane.t[top] + spot.t[top] <= Face.Perfused.stopsAboveC()
            || plane.t[top] + spotPart(grid.z[top], atTissue) <= Face.Perfused.stopsAboveC());
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
    double below = underFloor();
    double added = spotPart(floorM, atFloor);
    metC = below + added;
    double held = held(h);
    spot.source[row] =
        held * spot.t[row]
            + flux
            + h * (onSpot.temperatureC() - below)
            - undisturbed
            - lost * (spot.t[row] - added);
  }

  /**
   * The loss to the wash outside is known from before a step; in a long step it changes with the
   * floor, or a body that conducts well would swing.
   */
  private double held(double h) {
    return longStep ? 2 * Math.max(0, outside.coefficientWPerM2K() - h) : 0;
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
    double h = onSpot.coefficientWPerM2K();
    spot.loss[row] = h + held(h);
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
      reading.begin(shape, grid, row, floorM, outside.coefficientWPerM2K());
      int element = reading.straightAbove(depthM);
      reading.atDistance(SpotReading.Term.RIM, element, depthM, rimM);
      reading.atDistance(SpotReading.Term.SIDE, element, depthM, sideDistanceM);
    }
    return reading.of(spot.t, sideShare);
  }
}
