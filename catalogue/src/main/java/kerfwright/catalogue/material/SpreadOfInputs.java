package kerfwright.catalogue.material;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import kerfwright.catalogue.table.Row;
import kerfwright.physics.material.Substance;

/**
 * Turns the model inputs of a material into its three substances. Where none is given for short
 * cracks their toughness is that of long ones.
 */
final class SpreadOfInputs {
  private static final List<Property> NEEDED =
      List.of(
          Property.HARDNESS,
          Property.YOUNG_MODULUS,
          Property.FRACTURE_TOUGHNESS,
          Property.DENSITY,
          Property.THERMAL_CONDUCTIVITY,
          Property.SPECIFIC_HEAT,
          Property.HARD_PHASE_HARDNESS,
          Property.HARD_PHASE_SHARE);

  private SpreadOfInputs() {}

  /** The spread; a property that is missing, doubled or impossible is a fault of the list row. */
  static Optional<Material.Spread> of(List<ModelInput> inputs, Row listRow) {
    Map<Property, ModelInput> byProperty = new EnumMap<>(Property.class);
    for (ModelInput input : inputs) {
      if (byProperty.put(input.property(), input) != null) {
        listRow.fault("id", "two model inputs for " + input.property().id());
      }
    }
    for (Property property : NEEDED) {
      if (!byProperty.containsKey(property)) {
        listRow.fault("id", "no model input for " + property.id());
      }
    }
    if (!listRow.sound()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Material.Spread(
              substance(byProperty, ModelInput::lowSi),
              substance(byProperty, ModelInput::typicalSi),
              substance(byProperty, ModelInput::highSi)));
    } catch (IllegalArgumentException impossible) {
      listRow.fault("id", "model inputs do not fit together: " + impossible.getMessage());
      return Optional.empty();
    }
  }

  private static Substance substance(
      Map<Property, ModelInput> inputs, ToDoubleFunction<ModelInput> end) {
    double[] values =
        NEEDED.stream()
            .map(inputs::get)
            .mapToDouble(input -> end.applyAsDouble(Objects.requireNonNull(input)))
            .toArray();
    ModelInput shortCracks = inputs.get(Property.SHORT_CRACK_TOUGHNESS);
    return new Substance(
        values[0],
        values[1],
        values[2],
        shortCracks == null ? values[2] : end.applyAsDouble(shortCracks),
        values[3],
        values[4],
        values[5],
        values[6],
        values[7]);
  }
}
