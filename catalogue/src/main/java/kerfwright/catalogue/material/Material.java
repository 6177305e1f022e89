package kerfwright.catalogue.material;

import java.util.List;
import kerfwright.physics.material.Substance;

/**
 * A material a layer may be made of.
 *
 * @param id id used in files, e.g. lithium-disilicate
 * @param label name for people
 * @param group tooth, metal, ceramic, polymer or cement
 * @param values every value known, best first within a property
 * @param spread low, typical and high of what the models need, each ordered
 */
public record Material(
    String id, String label, Group group, List<PropertyValue> values, Spread spread) {
  public Material {
    values = List.copyOf(values);
  }

  /** Groups of materials. */
  public enum Group {
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

  /** The label inside a sentence: "zirconia 3Y", but "PMMA". */
  public String inSentence() {
    boolean acronym = label.length() > 1 && Character.isUpperCase(label.charAt(1));
    return acronym ? label : Character.toLowerCase(label.charAt(0)) + label.substring(1);
  }
}
