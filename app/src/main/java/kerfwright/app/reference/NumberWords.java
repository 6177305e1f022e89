package kerfwright.app.reference;

import java.util.Locale;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.Characteristic;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.Shank;
import kerfwright.catalogue.instrument.WorkingPart;
import kerfwright.catalogue.number.NumberExplanation;
import kerfwright.catalogue.number.NumberGroup;
import kerfwright.catalogue.number.NumberSize;
import kerfwright.catalogue.number.UsSize;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What a number says, group by group, in words. */
public final class NumberWords {
  private NumberWords() {}

  /** What a group is about and where it stands. */
  public static String role(Say say, NumberGroup group) {
    return say.at("number.role-" + slug(group.role().name()));
  }

  public static String series(Say say, UsSize size) {
    return say.at("number.series-" + slug(size.series()));
  }

  /** What a group means; where it is known only in words of the catalogue, empty. */
  public static String meaning(Say say, NumberExplanation number, NumberGroup group) {
    return switch (group.role()) {
      case MATERIAL -> material(say, number.workingPart());
      case SHANK -> shank(say, number);
      case SHAPE -> shape(say, number.shape());
      case CHARACTERISTIC -> characteristic(say, number, group);
      case SIZE -> size(say, number.size(), group);
      case EXTENSION -> say.at("number.extension");
    };
  }

  private static String material(Say say, @Nullable WorkingPart part) {
    if (part == null) {
      return say.at("number.unknown-material");
    }
    String first = part.group().substring(0, 2);
    String what =
        part.material() == null || !say.has("number.material-" + first)
            ? say.at("number.unknown-material")
            : say.at("number.material-" + first);
    if (part.third() == null) {
      return say.at("number.third-unknown", what, part.group().substring(2));
    }
    String third =
        (bonded(first) ? "number.bond-" : metal(first) ? "number.coating-" : "number.third-")
            + part.group().charAt(2);
    return say.has(third) ? say.at("number.two", what, say.at(third)) : what;
  }

  private static boolean bonded(String first) {
    return first.compareTo("60") >= 0;
  }

  private static boolean metal(String first) {
    return first.compareTo("60") < 0;
  }

  private static String shank(Say say, NumberExplanation number) {
    Shank exact = number.shank();
    if (exact != null && exact.type() != null) {
      Length length = exact.overallLength();
      String name =
          say.at(
              "number.shank-type",
              exact.type().name(),
              say.figures(
                  String.format(Locale.ROOT, "%.2f", exact.type().diameter().millimetres())));
      return length == null || exact.lengthBasis() == null
          ? say.at("number.shank-no-length", name)
          : say.at(
              "number.shank",
              name,
              say.figures(Written.number(say, length.millimetres())),
              Labels.basis(say, exact.lengthBasis()));
    }
    Shank family = number.shankFamily();
    return family == null || family.type() == null
        ? say.at("number.unknown-shank")
        : say.at("number.unknown-shank-of", family.type().name());
  }

  private static String shape(Say say, @Nullable InstrumentShape shape) {
    return shape == null ? say.at("number.unknown-shape") : Labels.shape(say, shape);
  }

  private static String characteristic(Say say, NumberExplanation number, NumberGroup group) {
    Characteristic known = number.characteristic();
    if (known == null) {
      return say.at("number.unknown-characteristic");
    }
    return known.appliesTo() == Characteristic.AppliesTo.ROOT_CANAL
        ? say.at("number.taper-" + group.digits().charAt(2))
        : say.at("number.characteristic-" + known.code());
  }

  private static String size(Say say, NumberSize size, NumberGroup group) {
    String tenths = Written.number(say, size.tenths().millimetres());
    String hundredths = Written.number(say, size.hundredths().millimetres());
    return switch (size.rule()) {
      case TENTHS ->
          !group.known()
              ? say.at("number.unknown-size")
              : say.at(
                  group.meaning().contains(";") ? "number.size-not-nominal" : "number.size",
                  tenths);
      case HUNDREDTHS -> say.at("number.size-root-canal", hundredths);
      case UNDECIDED -> say.at("number.size-undecided", tenths, hundredths);
    };
  }

  private static String slug(String words) {
    return words.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }
}
