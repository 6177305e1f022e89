package kerfwright.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Trait;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;

/**
 * A named rule that adds evidence for or against a choice; it never changes the choice.
 *
 * @param code stable code, words with hyphens
 * @param basis how sure it is
 * @param sources where it comes from
 * @param applies whether it has anything to say about a choice
 * @param favours whether it speaks for the choice
 * @param speaks which sides it ever speaks for
 */
public record EvidenceRule(
    String code,
    Basis basis,
    List<SourceKey> sources,
    Predicate<Choice> applies,
    Predicate<Choice> favours,
    Speaks speaks)
    implements Standing {
  public EvidenceRule {
    sources = List.copyOf(sources);
  }

  /** On which side a rule can speak. */
  public enum Speaks {
    FOR,
    AGAINST,
    EITHER
  }

  /** The rule in a sentence: what it says for a choice, or against where it is never for one. */
  public Message message() {
    return message(speaks != Speaks.AGAINST);
  }

  private Message message(boolean supports) {
    return Message.of("reason." + code + (supports ? "-for" : "-against"));
  }

  /** A choice in its case, in the words rules use. */
  public record Choice(Candidate candidate, RuleContext context) {
    InstrumentProperties instrument() {
      return candidate.instrument().properties();
    }

    InstrumentKind kind() {
      return instrument().kind();
    }

    boolean diamond() {
      return kind().isDiamond();
    }

    boolean coarse() {
      GritClass grit = instrument().grit();
      return grit == GritClass.COARSE || grit == GritClass.EXTRA_COARSE;
    }

    int blades() {
      Integer blades = instrument().blades();
      return blades == null ? 0 : blades;
    }

    ShapeFamily shape() {
      return instrument().shape();
    }

    Material material() {
      return candidate.material();
    }

    boolean glassCeramic() {
      return material().has(Trait.PORCELAIN) || material().has(Trait.LEUCITE);
    }

    boolean zirconia() {
      return material().has(Trait.ZIRCONIA);
    }

    Purpose purpose() {
      return candidate.purpose();
    }

    boolean cuts() {
      return purpose() != Purpose.POLISH;
    }

    Stroke stroke() {
      return candidate.stroke();
    }

    Procedure procedure() {
      return context.cutCase().procedure();
    }
  }

  /** The evidence on a choice, or nothing. */
  public Optional<Reason> on(Candidate candidate, RuleContext context) {
    Choice choice = new Choice(candidate, context);
    if (!applies.test(choice)) {
      return Optional.empty();
    }
    boolean supports = favours.test(choice);
    return Optional.of(new Reason(code, message(supports), supports, basis, sources));
  }
}
