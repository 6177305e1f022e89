package kerfwright.catalogue.material;

import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/**
 * The value of one property that the models take for one material, and on what footing: read,
 * recalled, or assumed.
 *
 * @param id id of the row
 * @param materialId the material
 * @param property the property; it gives the unit of the three values
 * @param low low end
 * @param typical typical value
 * @param high high end
 * @param takenFrom ids of the published rows it rests on, may be empty
 * @param sources sources of those rows, or of the value itself
 * @param basis standing of the typical value
 * @param note why this value, and the standing of an end that is weaker
 */
public record ModelInput(
    String id,
    String materialId,
    Property property,
    double low,
    double typical,
    double high,
    List<String> takenFrom,
    List<SourceKey> sources,
    Basis basis,
    String note) {
  double lowSi() {
    return property.toSi(low);
  }

  double typicalSi() {
    return property.toSi(typical);
  }

  double highSi() {
    return property.toSi(high);
  }
}
