package kerfwright.planner.rule;

import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.KeepDefaults;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.operation.Pace;
import org.jspecify.annotations.Nullable;

/** What a rule may look at besides the choice itself. */
public final class RuleContext {
  private static final double REACTION_S = 0.3;

  private final CutCase cutCase;
  private final @Nullable Material kept;

  /** The context of a case. */
  public RuleContext(CutCase cutCase) {
    this.cutCase = cutCase;
    Keep keep = KeepDefaults.of(cutCase);
    this.kept =
        keep == null
            ? null
            : cutCase.layers().stream()
                .map(l -> l.material())
                .filter(m -> m.id().equals(keep.materialId()))
                .findFirst()
                .orElse(null);
  }

  public CutCase cutCase() {
    return cutCase;
  }

  /** True in adhesive clean-up over enamel: all of it must stay. */
  public boolean guardsEnamelUnderAdhesive() {
    return Procedure.ADHESIVE_CLEAN_UP.equals(cutCase.procedure()) && kept != null;
  }

  /** What the same choice would do to the kept material. */
  public CutResult onKept(Candidate c) {
    if (kept == null) {
      throw new IllegalStateException("The case keeps nothing");
    }
    double flow = cutCase.coolant().millilitresPerMinute();
    return c.instrument()
        .part()
        .cut(
            kept.typical(),
            c.contact(),
            new OperatingPoint(
                c.loadN(),
                c.rimMPerS(),
                flow,
                c.instrument().part().sharpness(),
                Pace.of(c.work().operation(), flow).cutS()));
  }

  /** Depth cut into the kept material before the hand reacts, m. */
  public double slipM(Candidate c, CutResult onKept) {
    Engagement contact = c.contact();
    return onKept.removalM3PerS() / (contact.engagedLengthM() * contact.diameterM()) * REACTION_S;
  }
}
