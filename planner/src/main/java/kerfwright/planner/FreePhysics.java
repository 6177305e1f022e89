package kerfwright.planner;

import java.util.ArrayList;
import java.util.List;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.explain.Outside;
import kerfwright.planner.operation.Work;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;

/** What the models choose where kind, grit, blades, handpiece and speed are left to them. */
public final class FreePhysics {
  private FreePhysics() {}

  /**
   * The free choice for one operation.
   *
   * @param variant way of the procedure
   * @param operation id of the operation
   * @param instrument kind, with grit or blades
   * @param handpiece id of the handpiece
   * @param kind whether the operation allows the kind
   * @param allowed whether it allows grit or blades, handpiece and speed too
   */
  public record Choice(
      String variant,
      String operation,
      String instrument,
      String handpiece,
      boolean kind,
      boolean allowed) {}

  /** The choices for every operation of a case that cuts. */
  public static List<Choice> of(CutCase cutCase, DrawerSnapshot drawer) {
    CandidateSearch open =
        new CandidateSearch(cutCase, drawer.instruments(), Vetoes.all(), OwnPace.NONE, true);
    List<Choice> choices = new ArrayList<>();
    for (Work work : Operations.laid(cutCase).works()) {
      Outside.best(open.on(work).candidates()).map(FreePhysics::choice).ifPresent(choices::add);
    }
    return choices;
  }

  private static Choice choice(Candidate c) {
    var p = c.instrument().properties();
    String fineness =
        p.grit() != null ? p.grit().label() : p.blades() == null ? "" : p.blades() + " blades";
    return new Choice(
        c.work().operation().variant(),
        c.work().operation().id(),
        p.kind().id() + (fineness.isEmpty() ? "" : ", " + fineness),
        c.handpiece().id(),
        c.work().operation().window().kinds().contains(p.kind()),
        !Outside.leavesTheWindow(c));
  }
}
