package kerfwright.physics.heat.field;

import java.util.List;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.quantity.Check;

/**
 * A layered conduction problem, complete in itself.
 *
 * @param body layers, size, start and far faces
 * @param schedule what happens on the top
 * @param outputEveryS output interval
 * @param probes where temperatures are wanted
 * @param resolution an allowed error, or a mesh
 */
public record HeatProblem(
    HeatBody body,
    HeatSchedule schedule,
    double outputEveryS,
    List<HeatProbe> probes,
    Resolution resolution) {
  public HeatProblem {
    Check.positive("Output interval", "s", outputEveryS);
    probes = List.copyOf(probes);
    if (probes.isEmpty()) {
      throw new IllegalArgumentException("A heat problem needs at least one probe");
    }
  }

  /** Computes the temperatures. */
  public HeatSolution solve() {
    return resolution instanceof Resolution.On on
        ? new HeatSolution(run(on.mesh()), Double.NaN, true)
        : new ErrorControl(this, ((Resolution.WithinK) resolution).errorK()).solve();
  }

  HeatSeries run(HeatMesh mesh) {
    return new AxisymmetricConduction(body, schedule, probes, mesh).run(outputEveryS);
  }
}
