package kerfwright.planner;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.stack.RootWalls;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.heat.Bore;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.RootHeat;
import kerfwright.planner.heat.RootSurface;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.RootRise;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.quantity.Message;

/** The outer root surface where the chamber is opened, or a post or metal leads into the root. */
final class RootOfPlan {
  private RootOfPlan() {}

  static Optional<RootRise> of(CutCase c, List<Work> works, List<TimedCut> sequence) {
    boolean target = works.stream().anyMatch(w -> w.heat() == HeatTarget.ROOT_SURFACE);
    if (!target) {
      return Optional.empty();
    }
    List<CutHeat> cuts = SequenceHeat.cuts(sequence);
    RootHeat heat =
        RootSurface.of(
            post(c) ? RootWalls.canal(c.tooth()) : RootWalls.chamber(c.tooth()),
            bore(c, works),
            cuts,
            c.coolant(),
            HeatInputs.TYPICAL);
    if (heat instanceof RootHeat.Computed computed) {
      return Optional.of(new RootRise(computed.peakRiseK(), RootHeat.LIMIT_K, null));
    }
    return Optional.of(new RootRise(null, RootHeat.LIMIT_K, Message.of("plan.root-not-computed")));
  }

  private static Bore bore(CutCase c, List<Work> works) {
    double depth = PulpDistance.deepestM(works) * 1e3;
    double heated = Math.max(0.5, depth);
    return post(c)
        ? Bore.canal(c.outline().width().millimetres(), heated)
        : Bore.chamber(c.outline().areaM2() * 1e6, heated);
  }

  private static boolean post(CutCase c) {
    return c.procedure().equals(Procedure.POST_EXPOSURE)
        || c.procedure().equals(Procedure.POST_REMOVAL);
  }
}
