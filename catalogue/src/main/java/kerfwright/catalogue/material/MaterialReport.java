package kerfwright.catalogue.material;

import java.util.List;

/**
 * Everything the catalogue knows of a material: what the models take, and under it every published
 * or recalled value.
 *
 * @param material the material with its published values
 * @param caseMaterial whether a layer of a case may be made of it
 * @param note remark, may be empty
 * @param modelInputs what the models take, one row a property, with its standing
 */
public record MaterialReport(
    Material material, boolean caseMaterial, String note, List<ModelInput> modelInputs) {
  /** Published and recalled values of one property, best first. */
  public List<PropertyValue> published(Property property) {
    return material.values().stream().filter(v -> v.property().equals(property.id())).toList();
  }
}
