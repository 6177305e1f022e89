package kerfwright.catalogue.number;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.Shapes;
import org.jspecify.annotations.Nullable;

/** Reads single columns of a row and keeps every fault; a blank column gives null. */
final class FieldReader {
  private final List<FieldFault> faults = new ArrayList<>();

  void fault(String field, String found, Remark expected, String... nearest) {
    faults.add(new FieldFault(field, found, expected, List.of(nearest)));
  }

  List<FieldFault> faults() {
    return faults;
  }

  /** True where a fault of this column is already noted. */
  boolean faulty(String field) {
    return faults.stream().anyMatch(fault -> fault.field().equals(field));
  }

  @Nullable NumberExplanation number(String text) {
    if (text.isEmpty()) {
      return null;
    }
    try {
      return IsoNumber.parse(text).explain();
    } catch (MalformedNumberException e) {
      fault("iso", text, e.remark());
      return null;
    }
  }

  @Nullable UsSize usSize(String text) {
    if (text.isEmpty()) {
      return null;
    }
    Optional<UsSize> size = UsSizes.find(text);
    if (size.isEmpty()) {
      Remark expected = Remark.of("us-known");
      add("us", text, expected, UsSizes.suggestions(text));
    }
    return size.orElse(null);
  }

  @Nullable InstrumentKind kind(String text) {
    if (text.isEmpty()) {
      return null;
    }
    Optional<InstrumentKind> kind = InstrumentKind.byId(text);
    if (kind.isEmpty()) {
      add(
          "kind",
          text,
          kinds("kind-known"),
          NearestName.suggestions(text, InstrumentKind.ids(), 2));
    }
    return kind.orElse(null);
  }

  @Nullable InstrumentShape shape(String text) {
    if (text.isEmpty()) {
      return null;
    }
    Optional<InstrumentShape> shape = Shapes.find(text);
    if (shape.isEmpty()) {
      add("shape", text, Remark.of("shape-known"), Shapes.suggestions(text));
      return null;
    }
    if (shape.get().rootCanal()) {
      fault("shape", text, Remark.of("shape-not-root-canal"));
      return null;
    }
    return shape.get();
  }

  @Nullable ShankType shank(String text) {
    if (text.isEmpty()) {
      return null;
    }
    for (ShankType type : ShankType.values()) {
      if (type.name().equalsIgnoreCase(text) || type.label().equalsIgnoreCase(text)) {
        return type;
      }
    }
    add(
        "shank",
        text,
        Remark.of("shank-known"),
        NearestName.suggestions(
            text, Arrays.stream(ShankType.values()).map(Enum::name).toList(), 1));
    return null;
  }

  /** A number within limits; a comma is not taken for a point. */
  @Nullable Double number(String field, String text, double least, double most, String unit) {
    if (text.isEmpty()) {
      return null;
    }
    if (text.matches("\\d{1,7}(\\.\\d{1,6})?")) {
      double value = Double.parseDouble(text);
      if (value >= least && value <= most) {
        return value;
      }
    }
    fault(
        field, text, Remark.of(unit.equals(" mm") ? "between-mm" : "between-per-min", least, most));
    return null;
  }

  /** A whole number within limits. */
  @Nullable Integer whole(String field, String text, int least, int most) {
    if (text.isEmpty()) {
      return null;
    }
    if (text.matches("\\d{1,7}")) {
      int value = Integer.parseInt(text);
      if (value >= least && value <= most) {
        return value;
      }
    }
    fault(field, text, Remark.of("whole-between", least, most));
    return null;
  }

  /** Yes or no; blank is no. */
  boolean yes(String field, String text) {
    return oneOf(field, text.toLowerCase(Locale.ROOT), List.of("yes", "no")).equals("yes");
  }

  /** One of a few words, or blank. */
  String oneOf(String field, String text, List<String> words) {
    if (!text.isEmpty() && !words.contains(text)) {
      String known = String.join(", ", words);
      add(field, text, Remark.of("word-known", known), NearestName.suggestions(text, words, 2));
    }
    return text;
  }

  static Remark kinds(String code) {
    return Remark.of(code, List.of(InstrumentKind.values()));
  }

  private void add(String field, String found, Remark expected, List<String> nearest) {
    faults.add(new FieldFault(field, found, expected, nearest));
  }
}
