package kerfwright.catalogue.stack;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.stack.Readings.Reading;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * Splits the dentine of a natural stack into decay and what is left under it, as depth is graded:
 * shallow decay ends in the outer third of the dentine, moderate in the middle, deep in the inner.
 */
final class DepthOfDecay {
  private DepthOfDecay() {}

  static List<UsualLayer> layers(List<UsualLayer> natural, String depth) {
    Reading share = Readings.packaged().get("decay-" + depth);
    List<UsualLayer> layers = new ArrayList<>();
    for (UsualLayer layer : natural) {
      Range<Length> whole = layer.thickness();
      if (whole == null || !layer.has(Trait.DENTINE)) {
        layers.add(layer);
        continue;
      }
      double mm = whole.typical().millimetres();
      layers.add(
          new UsualLayer(
              "carious-dentine",
              range(share.low() * mm, share.typical() * mm, share.high() * mm),
              "share of the dentine, " + depth,
              layer.takenFrom(),
              share.sources(),
              share.basis(),
              "third-of-dentine"));
      layers.add(
          layer.with(
              range(
                  (1 - share.high()) * whole.low().millimetres(),
                  (1 - share.typical()) * mm,
                  (1 - share.low()) * whole.high().millimetres()),
              "what is left of the dentine under " + depth + " decay"));
    }
    return layers;
  }

  private static Range<Length> range(double low, double typical, double high) {
    return new Range<>(
        Length.ofMillimetres(low), Length.ofMillimetres(typical), Length.ofMillimetres(high));
  }
}
