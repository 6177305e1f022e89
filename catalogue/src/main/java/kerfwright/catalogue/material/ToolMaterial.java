package kerfwright.catalogue.material;

import java.util.List;
import kerfwright.quantity.Pressure;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * What an instrument, its grain or its shank is made of.
 *
 * @param id id, e.g. cemented-carbide
 * @param label name for people
 * @param hardness indentation hardness
 * @param young Young's modulus
 * @param densityKgPerM3 density
 * @param toughnessPaSqrtM fracture toughness
 * @param strength strength in bending, or null where no figure stands
 * @param inputs the rows behind the figures, each with its standing
 */
public record ToolMaterial(
    String id,
    String label,
    Range<Pressure> hardness,
    Range<Pressure> young,
    Range<Double> densityKgPerM3,
    Range<Double> toughnessPaSqrtM,
    @Nullable Range<Pressure> strength,
    List<ModelInput> inputs) {}
