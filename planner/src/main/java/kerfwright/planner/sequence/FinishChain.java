package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kerfwright.planner.choice.Candidate;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest chain of finishing and polishing passes from a rough surface to a wanted one: each
 * pass must clear the damage the one before left, and leaves at most 0.7 of its roughness (project
 * setting).
 *
 * <p>Candidates are worked out for a pass of {@link #PASS_M}; time and wear grow in proportion to
 * the depth really cleared.
 */
public final class FinishChain {
  /** Depth of the pass candidates are worked out for. */
  public static final double PASS_M = 10e-6;

  private static final double FINER = 0.7;

  private final List<Link> links;
  private final double goalM;

  /** Prepares the chain for a goal. */
  public FinishChain(List<Candidate> finishers, double goalM) {
    this.goalM = goalM;
    this.links = new ArrayList<>();
    List<Candidate> fromFine =
        finishers.stream()
            .sorted(Comparator.comparingDouble(Candidate::raM).thenComparing(Candidate::id))
            .toList();
    for (Candidate c : fromFine) {
      Link next = c.raM() <= goalM ? null : cheapest(c.raM(), c.damageM(), c);
      boolean arrives = c.raM() <= goalM || next != null;
      double rest =
          next == null
              ? 0
              : next.passS(c.damageM()) + next.restS() + Change.seconds(c, next.pass());
      if (arrives) {
        links.add(new Link(c, next, rest));
      }
    }
  }

  /** One pass and what must follow it. */
  private record Link(Candidate pass, @Nullable Link next, double restS) {
    /** Cost of this pass when a depth has to be cleared. */
    double passS(double depthM) {
      return pass.costS() * Math.max(1e-6, depthM) / PASS_M;
    }
  }

  private @Nullable Link cheapest(double raM, double damageM, Candidate from) {
    Link best = null;
    double bestS = Double.POSITIVE_INFINITY;
    for (Link link : links) {
      if (link.pass().raM() > FINER * raM) {
        continue;
      }
      double s = link.passS(damageM) + link.restS() + Change.seconds(from, link.pass());
      if (s < bestS) {
        bestS = s;
        best = link;
      }
    }
    return best;
  }

  /**
   * Cost of finishing what a candidate leaves; a large finite price where the goal is out of reach.
   */
  public double costS(Candidate last) {
    if (last.raM() <= goalM) {
      return 0;
    }
    Link link = cheapest(last.raM(), last.damageM(), last);
    return link == null
        ? 1e4 + last.raM() * 1e9
        : link.passS(last.damageM()) + link.restS() + Change.seconds(last, link.pass());
  }

  /**
   * The passes after a candidate, each with the depth it has to clear; empty where none is needed.
   */
  public List<Pass> after(Candidate last) {
    List<Pass> passes = new ArrayList<>();
    if (last.raM() <= goalM) {
      return passes;
    }
    double damage = last.damageM();
    for (Link link = cheapest(last.raM(), damage, last); link != null; link = link.next()) {
      passes.add(new Pass(link.pass(), damage));
      damage = link.pass().damageM();
    }
    return passes;
  }

  /** Whether the goal can be reached from a candidate. */
  public boolean reachable(Candidate last) {
    return last.raM() <= goalM || cheapest(last.raM(), last.damageM(), last) != null;
  }

  /** A pass and the depth it clears. */
  public record Pass(Candidate candidate, double depthM) {}
}
