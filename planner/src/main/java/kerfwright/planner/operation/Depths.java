package kerfwright.planner.operation;

import java.util.Arrays;
import java.util.List;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Trait;
import kerfwright.planner.casework.Layer;

/**
 * Depths of a stack in mm, layers asked for by words: ids or traits with {@code |} between them.
 */
record Depths(List<Layer> layers) {
  static final double FILM_MM = 0.2;
  static final double LEAST_MM = 1e-6;

  Depths {
    layers = List.copyOf(layers);
  }

  static boolean matches(Material material, String words) {
    return Arrays.stream(words.split("\\|")).map(String::strip).anyMatch(material::is);
  }

  double thickness(int layer) {
    return layers.get(layer).thickness().typical().millimetres();
  }

  Material material(int layer) {
    return layers.get(layer).material();
  }

  /** Depth of a layer's outer face. */
  double top(int layer) {
    double depth = 0;
    for (int i = 0; i < layer; i++) {
      depth += thickness(i);
    }
    return depth;
  }

  double bottom(int layer) {
    return top(layer) + thickness(layer);
  }

  /** Depth of the floor of the whole stack. */
  double total() {
    return bottom(layers.size() - 1);
  }

  /** Thickness of all layers of these words. */
  double thickness(String words) {
    double sum = 0;
    for (int i = 0; i < layers.size(); i++) {
      sum += matches(material(i), words) ? thickness(i) : 0;
    }
    return sum;
  }

  /**
   * Depth of the outer face of the first layer of these words; of the floor where there is none.
   */
  double top(String words) {
    for (int i = 0; i < layers.size(); i++) {
      if (matches(material(i), words)) {
        return top(i);
      }
    }
    return total();
  }

  /** Depth of the floor of the last layer of these words; 0 where there is none. */
  double bottom(String words) {
    for (int i = layers.size() - 1; i >= 0; i--) {
      if (matches(material(i), words)) {
        return bottom(i);
      }
    }
    return 0;
  }

  /** The layer at a depth, just below it; the last one from the floor on. */
  int at(double depthMm) {
    for (int i = 0; i < layers.size(); i++) {
      if (depthMm < bottom(i) - LEAST_MM) {
        return i;
      }
    }
    return layers.size() - 1;
  }

  /** Whether a layer is a film: cut with its neighbour. */
  boolean film(int layer) {
    return material(layer).has(Trait.FILM) && thickness(layer) < FILM_MM;
  }

  /** What lies between two depths of a layer. */
  double between(int layer, double fromMm, double toMm) {
    return Math.max(0, Math.min(bottom(layer), toMm) - Math.max(top(layer), fromMm));
  }
}
