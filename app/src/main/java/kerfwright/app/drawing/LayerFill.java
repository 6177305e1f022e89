package kerfwright.app.drawing;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.catalogue.material.Material;

/**
 * How a layer of a material is filled where a page draws it itself: the hatchings of the sections.
 */
public final class LayerFill {
  private LayerFill() {}

  /** Every hatching as a pattern, once for a page. */
  public static String patterns() {
    return Stream.of(Hatch.values())
        .map(
            hatch -> {
              double[] tile = hatch.tile();
              return "<pattern id=\""
                  + id(hatch)
                  + "\" patternUnits=\"userSpaceOnUse\" width=\""
                  + Svg.number(tile[0])
                  + "\" height=\""
                  + Svg.number(tile[1])
                  + "\"><path "
                  + Pen.HATCH.attributes()
                  + " d=\""
                  + hatch.path(-2 * tile[0], -2 * tile[1], 5 * tile[0], 5 * tile[1], false)
                  + "\"/></pattern>";
            })
        .collect(
            Collectors.joining(
                "", "<svg width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>", "</defs></svg>"));
  }

  /** The pattern of a material and the class of the ground under it. */
  public static String of(Material material) {
    return id(Hatch.of(material)) + " " + Hatch.ground(material).className();
  }

  /** The same for many, by their ids. */
  public static Map<String, String> of(Iterable<Material> materials) {
    return java.util.stream.StreamSupport.stream(materials.spliterator(), false)
        .collect(Collectors.toMap(Material::id, (Function<Material, String>) LayerFill::of));
  }

  private static String id(Hatch hatch) {
    return "hatch-" + hatch.id();
  }
}
