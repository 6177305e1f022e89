package kerfwright.planner.casework;

import java.util.List;
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
 * @param pulp its pulp state
 * @param restoration what stands on it, where told
 * @param layers the stack, outermost first
 * @param stackFilledIn true where the usual stack was filled in because the case gave none
 * @param stackSources where that stack comes from
 * @param keep what must remain, or null
 * @param outline the opening or surface
 * @param finishRa the roughness wanted at the end, or null
 * @param handpieces what is at hand
 * @param coolant water reaching the tip
 */
public record CutCase(
    String reference,
    Procedure procedure,
    Tooth tooth,
    PulpState pulp,
    @Nullable String restoration,
    List<Layer> layers,
    boolean stackFilledIn,
    List<SourceKey> stackSources,
    @Nullable Keep keep,
    Outline outline,
    @Nullable Length finishRa,
    List<Handpiece> handpieces,
    FlowRate coolant) {
  public CutCase {
    layers = List.copyOf(layers);
    stackSources = List.copyOf(stackSources);
    handpieces = List.copyOf(handpieces);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("A case needs at least one layer");
    }
    if (handpieces.isEmpty()) {
      throw new IllegalArgumentException("A case needs at least one handpiece");
    }
  }

  /** Below this flow, mL/min, a cut counts as dry (project setting). */
  public static final double DRY_ML_PER_MIN = 10;

  public boolean dry() {
    return coolant.millilitresPerMinute() < DRY_ML_PER_MIN;
  }
}
