package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import kerfwright.app.reference.NumberAnswer;
import kerfwright.app.reference.NumberWords;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.Characteristic.AppliesTo;
import kerfwright.catalogue.instrument.Characteristics;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingParts;
import kerfwright.catalogue.number.IsoNumber;
import kerfwright.catalogue.number.NumberExplanation;

/**
 * A fifteen-digit number built group by group; what is not chosen yet is drawn as usual.
 *
 * @param parts the five groups in order
 * @param answer the whole number with its drawings
 */
public record NumberLesson(List<Part> parts, NumberAnswer answer) {
  private static final String DIAMOND = "806";
  private static final List<String> USUAL = List.of(DIAMOND, "314", "001", "524", "018");

  public NumberLesson {
    parts = List.copyOf(parts);
  }

  /**
   * One group.
   *
   * @param field its name
   * @param digits what is chosen, or what stands in
   * @param chosen whether it is chosen
   * @param role what the group is about
   * @param meaning what its digits say
   * @param options what may be chosen, digits and meaning
   */
  public record Part(
      String field,
      String digits,
      boolean chosen,
      String role,
      String meaning,
      Map<String, String> options) {
    /** Digit by digit, as it is read aloud. */
    public String aloud() {
      return String.join(" ", digits.split(""));
    }
  }

  static NumberLesson of(Say say, UnaryOperator<String> field) {
    Map<String, List<String>> codes = new LinkedHashMap<>();
    codes.put("material", materials());
    codes.put("shank", shanks());
    codes.put("shape", shapes());
    boolean bladed = bladed(digits(field.apply("material"), materials()));
    codes.put("characteristic", characteristics(bladed));
    codes.put("size", NominalSizes.all().stream().map(one -> one.code()).toList());
    List<String> whole = new ArrayList<>();
    codes.forEach((name, all) -> whole.add(digits(field.apply(name), all)));
    NumberExplanation explained = number(whole).explain();
    List<Part> parts = new ArrayList<>();
    codes.forEach(
        (name, all) -> {
          int place = parts.size();
          Map<String, String> options = new LinkedHashMap<>();
          for (String code : all) {
            List<String> with = new ArrayList<>(whole);
            with.set(place, code);
            options.put(code, meaning(say, number(with).explain(), place));
          }
          parts.add(
              new Part(
                  name,
                  whole.get(place),
                  all.contains(field.apply(name)),
                  NumberWords.role(say, explained.groups().get(place)),
                  meaning(say, explained, place),
                  options));
        });
    return new NumberLesson(parts, NumberAnswer.of(say, number(whole).encode(), ""));
  }

  /** What is chosen, or what stands in while nothing is. */
  private static String digits(String chosen, List<String> codes) {
    return codes.contains(chosen)
        ? chosen
        : codes.stream().filter(USUAL::contains).findFirst().orElse(codes.get(0));
  }

  /** The number as an address carries it. */
  public String query() {
    return String.join(
        "&",
        parts.stream().filter(Part::chosen).map(one -> one.field() + "=" + one.digits()).toList());
  }

  public boolean complete() {
    return parts.stream().allMatch(Part::chosen);
  }

  private static IsoNumber number(List<String> groups) {
    return IsoNumber.parse(String.join("", groups));
  }

  private static String meaning(Say say, NumberExplanation explained, int place) {
    return NumberWords.meaning(say, explained, explained.groups().get(place));
  }

  private static List<String> materials() {
    return Stream.of(
            InstrumentKind.DIAMOND,
            InstrumentKind.SINTERED_DIAMOND,
            InstrumentKind.CARBIDE,
            InstrumentKind.STEEL)
        .flatMap(kind -> WorkingParts.groupsOf(kind).stream())
        .toList();
  }

  private static boolean bladed(String material) {
    return WorkingParts.byGroup(material)
        .map(part -> !part.kinds().isEmpty() && part.kinds().get(0).bladed())
        .orElse(false);
  }

  private static List<String> shanks() {
    return Shanks.all().stream()
        .filter(one -> !one.familyOnly() && one.type() != null && one.overallLength() != null)
        .map(one -> one.code())
        .toList();
  }

  private static List<String> shapes() {
    return Shapes.all().stream()
        .filter(one -> !one.rootCanal() && one.code().length() == 3)
        .map(one -> one.code())
        .toList();
  }

  private static List<String> characteristics(boolean bladed) {
    AppliesTo to = bladed ? AppliesTo.BUR : AppliesTo.DIAMOND;
    return Characteristics.all().stream()
        .filter(one -> one.appliesTo() == to)
        .map(one -> one.code())
        .toList();
  }
}
