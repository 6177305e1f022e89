package kerfwright.planner.explain;

import kerfwright.catalogue.size.LeastThickness;
import kerfwright.catalogue.size.Place;
import kerfwright.catalogue.size.UsualSizes;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/** The least thickness of a layer that may stay, as published. */
final class LeastLeft {
  private LeastLeft() {}

  /** In millimetres, null where none is published. */
  static @Nullable Double mm(CutCase c, Layer layer, String variant) {
    Place place = new Place(c.tooth(), c.procedure().id(), variant);
    return UsualSizes.packaged()
        .least(layer.material(), place)
        .flatMap(LeastThickness::least)
        .map(Length::millimetres)
        .orElse(null);
  }
}
