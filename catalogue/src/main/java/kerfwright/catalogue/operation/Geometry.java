package kerfwright.catalogue.operation;

import java.util.Map;

/**
 * What is cut, as formulas of the case in mm and mm2. Names a kind may give: {@code volume} (mm3,
 * may depend on the head's diameter d), {@code area} (seen along the axis, or the surface swept),
 * {@code from} and {@code to} (depth below the surface the operation starts on), {@code width} (of
 * a slot), {@code length} (of a path), {@code count}, {@code wall} (height the side can meet),
 * {@code passes} and {@code travel} (mm/s, finishing).
 *
 * @param kind the shape
 * @param face the face of the tooth it is on: occlusal, facial, lingual, proximal, incisal, margin,
 *     axial, chamber, root; empty for the place of the opening
 * @param terms formulas by name
 */
public record Geometry(GeometryKind kind, String face, Map<String, Formula> terms) {
  public Geometry {
    terms = Map.copyOf(terms);
  }
}
