package kerfwright.catalogue.material;

import java.util.List;
import java.util.Set;
import kerfwright.physics.material.Substance;
import kerfwright.quantity.Identified;

/**
 * A material a layer may be made of.
 *
 * @param id id used in files, e.g. lithium-disilicate
 * @param label name for people
 * @param group tooth, metal, ceramic, polymer or cement
 * @param values every value known, best first within a property
 * @param spread low, typical and high of what the models need, each ordered
 * @param traits what rules ask of it, e.g. alloy, glass-ceramic, film; the README lists them
 */
public record Material(
    String id,
    String label,
    Group group,
    List<PropertyValue> values,
    Spread spread,
    Set<String> traits) {
  /** Whether it has a trait. */
  public boolean has(Trait trait) {
    return traits.contains(trait.id());
  }

  /** Whether a word of a data file stands for it: its id, or {@code #} and one of its traits. */
  public boolean is(String word) {
    return word.startsWith("#") ? traits.contains(word.substring(1)) : word.equals(id);
  }

  /** Groups of materials. */
  public enum Group implements Identified {
    TOOTH,
    BONE,
    METAL,
    CERAMIC,
    POLYMER,
    CEMENT;

    /** True where the cut surface stays in the mouth and its damage matters: tooth and ceramic. */
    public boolean stays() {
      return this == TOOTH || this == CERAMIC;
    }
  }

  /**
   * What the models need, as three substances; in each the property stands at its own low, typical
   * or high value.
   */
  public record Spread(Substance low, Substance typical, Substance high) {}

  /** The substance with every property at its typical value. */
  public Substance typical() {
    return spread.typical();
  }
}
