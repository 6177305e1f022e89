package kerfwright.catalogue.stack;

import java.util.Objects;
import java.util.Optional;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothClass;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * Usual dentine between chamber or canal and the outer surface of the root, from the figures of the
 * anatomy table that were seen: mean and the middle 90 percent by the standard deviation. Empty
 * where none was seen, so that nothing is computed from a guess.
 */
public final class RootWalls {
  private static final double MIDDLE_90 = 1.645;

  private RootWalls() {}

  /** From the floor of the chamber to the furcation; molars only. */
  public static Optional<Range<Length>> chamber(Tooth tooth) {
    if (tooth.primary() || tooth.toothClass() != ToothClass.MOLAR) {
      return Optional.empty();
    }
    return range("chamber-floor-to-furcation-m-" + (tooth.upper() ? "upper" : "lower") + "-1");
  }

  /** From a canal to the nearest surface of its root; lower molars only, at their mesial root. */
  public static Optional<Range<Length>> canal(Tooth tooth) {
    if (tooth.primary() || tooth.toothClass() != ToothClass.MOLAR || tooth.upper()) {
      return Optional.empty();
    }
    return range(tooth.position() == 6 ? "root-wall-m1-lower-1" : "root-wall-m-lower-1");
  }

  private static Optional<Range<Length>> range(String id) {
    return Anatomy.packaged()
        .tooth(id)
        .filter(row -> row.basis() == Basis.SEEN)
        .map(
            row -> {
              double mean = Objects.requireNonNull(row.numbers().typical());
              double each = MIDDLE_90 * Objects.requireNonNull(row.sd());
              return new Range<>(
                  Length.ofMillimetres(mean - each),
                  Length.ofMillimetres(mean),
                  Length.ofMillimetres(mean + each));
            });
  }
}
