package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import org.junit.jupiter.api.Test;

/** Nothing is allocated in a time step: ten times the steps take no more memory. */
class AllocationTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  @Test
  void tenTimesTheStepsOfTheAxisymmetricSolverAllocateNoMore() {
    assertTrue(Math.abs(allocated(solver(0.002)) - allocated(solver(0.02))) < 4096);
  }

  private static Runnable solver(double stepS) {
    AxisymmetricConduction solver =
        new AxisymmetricConduction(
            HeatCases.crown(),
            HeatCases.strokesOnCrown(0.05),
            HeatCases.CROWN_PROBES,
            HeatMesh.graded(10, 24, stepS));
    return () -> solver.run(1);
  }

  @Test
  void tenTimesTheStrokesOfTheColumnAllocateNoMore() {
    assertTrue(Math.abs(allocated(column(0.2)) - allocated(column(2))) < 4096);
  }

  private static Runnable column(double strokeS) {
    LayeredColumn column = new LayeredColumn();
    Coolant water = new Coolant(3000, 25);
    HeatSchedule schedule =
        new HeatSchedule(1, List.of(HeatStretch.strokes(40, 1e5, strokeS, strokeS, water, 0.01)));
    HeatBody body = HeatCases.crown();
    double[] depths = {3};
    return () -> column.run(body, schedule, depths, 1);
  }

  private static long allocated(Runnable work) {
    work.run();
    work.run();
    long before = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
    work.run();
    return THREADS.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
  }
}
