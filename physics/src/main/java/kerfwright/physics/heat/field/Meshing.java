package kerfwright.physics.heat.field;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.numeric.Spacing;

/** Turns a wanted number of cells into lines that keep to layers, spot and probes. */
final class Meshing {
  private Meshing() {}

  static HeatGrid grid(
      HeatBody body, HeatSchedule schedule, List<HeatProbe> probes, HeatMesh mesh) {
    double spot = Math.min(schedule.spotRadiusMm(), body.radiusMm()) * 1e-3;
    double radius = body.radiusMm() * 1e-3;
    double depth = body.depthMm() * 1e-3;
    double[] interfaces = interfaces(body);
    if (!mesh.graded()) {
      DoubleUnaryOperator even = at -> 1;
      return new HeatGrid(
          body,
          spot,
          Spacing.lines(Spacing.breaks(radius, spot), mesh.cellsR(), even),
          Spacing.lines(Spacing.breaks(depth, interfaces), mesh.cellsZ(), even));
    }
    double cut = schedule.cutDepthMm() * 1e-3;
    DoubleUnaryOperator alongRadius = r -> 1 / (0.05 * spot + 0.4 * Math.abs(r - spot));
    DoubleUnaryOperator throughDepth = z -> 1 / (0.1 * spot + 0.25 * Math.max(0, z - cut));
    return new HeatGrid(
        body,
        spot,
        Spacing.lines(Spacing.breaks(radius, spot), mesh.cellsR(), alongRadius),
        Spacing.lines(
            withProbes(Spacing.breaks(depth, interfaces), probes, mesh.cellsZ()),
            mesh.cellsZ(),
            throughDepth));
  }

  private static double[] interfaces(HeatBody body) {
    double[] at = new double[body.layers().size() - 1];
    double bottom = 0;
    for (int l = 0; l < at.length; l++) {
      bottom += body.layers().get(l).thicknessMm() * 1e-3;
      at[l] = bottom;
    }
    return at;
  }

  /** Lines at the probes too, as long as they do not make cells much thinner than wanted. */
  private static double[] withProbes(double[] breaks, List<HeatProbe> probes, int cells) {
    double end = breaks[breaks.length - 1];
    double[] result = breaks;
    for (HeatProbe probe : probes) {
      double at = probe.zMm() * 1e-3;
      boolean free = at < end;
      for (double line : result) {
        free &= Math.abs(line - at) > 1.5 * end / cells;
      }
      if (free && result.length < cells / 2) {
        double[] inner = java.util.Arrays.copyOf(result, result.length + 1);
        inner[result.length] = at;
        result = Spacing.breaks(end, inner);
      }
    }
    return result;
  }
}
