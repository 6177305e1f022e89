package kerfwright.planner.casework;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * A case as asked for. Never a name: a case reference of the practice and a tooth.
 *
 * @param reference the practice's own reference
 * @param procedure what is to be done
 * @param tooth which tooth
 * @param condition what is found
 * @param aim what is to be there at the end
 * @param atHand what there is to do it with
 * @param filledIn what the case left open, each with the source of the usual value
 */
public record CutCase(
    String reference,
    Procedure procedure,
    Tooth tooth,
    Condition condition,
    Aim aim,
    AtHand atHand,
    List<FilledIn> filledIn) {
  public CutCase {
    filledIn = List.copyOf(filledIn);
  }

  /** Below this flow, mL/min, a cut counts as dry (project setting). */
  public static final double DRY_ML_PER_MIN = 10;

  public PulpState pulp() {
    return condition.pulp();
  }

  public @Nullable String restoration() {
    return condition.restoration();
  }

  public @Nullable Lesion lesion() {
    return condition.lesion();
  }

  public List<Layer> layers() {
    return condition.layers();
  }

  public @Nullable String intended() {
    return aim.intended();
  }

  public Outline outline() {
    return aim.outline();
  }

  public @Nullable Keep keep() {
    return aim.keep();
  }

  public @Nullable Length finishRa() {
    return aim.finishRa();
  }

  public List<Handpiece> handpieces() {
    return atHand.handpieces();
  }

  public FlowRate coolant() {
    return atHand.coolant();
  }

  public boolean dry() {
    return coolant().millilitresPerMinute() < DRY_ML_PER_MIN;
  }

  /** How a field was filled in; empty where the case gave it. */
  public Optional<FilledIn> filled(String field) {
    return filledIn.stream().filter(one -> one.field().equals(field)).findFirst();
  }

  /** True where the usual layers stand in. */
  public boolean stackFilledIn() {
    return filled("layers").isPresent();
  }

  /** Where those layers come from. */
  public List<SourceKey> stackSources() {
    return filled("layers").map(FilledIn::sources).orElse(List.of());
  }

  /** The same with another flow of water. */
  public CutCase with(FlowRate coolant) {
    AtHand wet = new AtHand(handpieces(), coolant);
    return new CutCase(reference, procedure, tooth, condition, aim, wet, filledIn);
  }
}
