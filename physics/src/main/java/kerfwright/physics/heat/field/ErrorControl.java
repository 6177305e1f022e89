package kerfwright.physics.heat.field;

import kerfwright.physics.heat.HeatStretch;

/**
 * Chooses cells and step for an allowed error by computing on two meshes and comparing.
 *
 * <p>First guess: cells along the radius n = 0.55 / sqrt(e), where e is the allowed error over the
 * temperature scale q a / k + |T_coolant - T_0| (second order; the factor from a few cases). The
 * error of the finer of two meshes, f times as fine, is taken as (largest difference) / (f^p - 1)
 * with p = 1.6, below the formal order 2, since the edge of the spot and the corner of a cavity
 * lower it. While that is above the limit, the mesh is refined by what the order promises.
 */
final class ErrorControl {
  private static final double ORDER = 1.6;
  private static final double COARSER = 1.5;
  private static final double LONGEST_STEP_S = 1.0 / 30;
  private static final double LONGEST_STEP_CUTTING_S = 0.02;
  private static final long MOST_CELLS = 300_000;

  private final HeatProblem problem;
  private final double errorK;

  ErrorControl(HeatProblem problem, double errorK) {
    this.problem = problem;
    this.errorK = errorK;
  }

  HeatSolution solve() {
    double cells = firstGuess();
    HeatSeries coarse = problem.run(mesh(cells / COARSER, 1.25));
    HeatSeries fine = problem.run(mesh(cells, 1));
    double finer = COARSER;
    while (true) {
      double estimate = difference(coarse, fine) / (Math.pow(finer, ORDER) - 1);
      if (estimate <= errorK) {
        return new HeatSolution(fine, estimate, true);
      }
      double wanted = Math.pow(estimate / errorK, 1 / ORDER) * 1.05;
      finer = Math.max(1.3, Math.min(2.5, wanted));
      HeatMesh next = mesh(cells * finer, 1);
      if ((long) next.cellsR() * next.cellsZ() > MOST_CELLS) {
        return new HeatSolution(fine, estimate, false);
      }
      cells *= finer;
      coarse = fine;
      fine = problem.run(next);
    }
  }

  private double firstGuess() {
    double scale = 0;
    double k = problem.body().layers().get(0).conductivityWPerMK();
    double radius = problem.schedule().spotRadiusMm() * 1e-3;
    for (HeatStretch s : problem.schedule().stretches()) {
      double cooling = Math.abs(s.outside().temperatureC() - problem.body().initialC());
      scale = Math.max(scale, Math.abs(s.fluxWPerM2()) * radius / k + 0.2 * cooling);
    }
    double relative = errorK / Math.max(scale, 10 * errorK);
    double guess = Math.max(16, Math.min(200, 0.55 / Math.sqrt(relative)));
    return problem.schedule().cutDepthMm() > 0 ? Math.min(200, 1.9 * guess) : guess;
  }

  private HeatMesh mesh(double cells, double stepFactor) {
    double cut = problem.schedule().cutDepthMm();
    double deeper = cut > 0 ? 1.3 + Math.min(1.2, cut / problem.schedule().spotRadiusMm()) : 1.25;
    int layers = problem.body().layers().size();
    int cellsR = (int) Math.max(8, Math.round(cells));
    int cellsZ = (int) Math.max(8 + 2 * layers, Math.round(cells * deeper));
    double longest = cut > 0 ? LONGEST_STEP_CUTTING_S : LONGEST_STEP_S;
    double step = longest * Math.min(1, (cut > 0 ? 90 : 60) / cells) * stepFactor;
    return HeatMesh.graded(cellsR, cellsZ, step);
  }

  private double difference(HeatSeries a, HeatSeries b) {
    double largest = 0;
    for (int p = 0; p < a.probesC().length; p++) {
      for (int t = 0; t < a.timesS().length; t++) {
        largest = Math.max(largest, Math.abs(a.probesC()[p][t] - b.probesC()[p][t]));
      }
    }
    return largest;
  }
}
