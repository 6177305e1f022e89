package kerfwright.planner.uncertainty;

import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.Family;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.RatioBand;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.WorkingPart;

/**
 * One choice against another in the same case. Two figures of one practice share what it is off by,
 * and only their own scatter remains; a diamond instrument against a carbide bur shares nothing,
 * for the two models err apart.
 */
public final class Against {
  private Against() {}

  /** The family of a working part's rate. */
  public static Family rate(WorkingPart part) {
    return Family.ofRate(!(part instanceof AbrasivePart));
  }

  /** Time in contact of one choice over that of another. */
  public static RatioBand time(Candidate one, Candidate other) {
    return RatioBand.of(
        one.cutS() / other.cutS(),
        sd(rate(one.instrument().part()), rate(other.instrument().part())));
  }

  /** Rate of one working part over that of another, of which only the ratio is computed. */
  public static RatioBand rates(WorkingPart one, WorkingPart other, double ratio) {
    return RatioBand.of(ratio, sd(rate(one), rate(other)));
  }

  /** Standard deviation of the logarithm of the ratio of two rates. */
  static double sd(Family one, Family other) {
    Discrepancy a = Discrepancies.packaged().of(one);
    Discrepancy b = Discrepancies.packaged().of(other);
    double own = square(a.within()) + square(b.within());
    double levels =
        one == other ? 0 : square(OwnLevel.prior(a).sd()) + square(OwnLevel.prior(b).sd());
    return Math.sqrt(own + levels);
  }

  private static double square(double x) {
    return x * x;
  }
}
