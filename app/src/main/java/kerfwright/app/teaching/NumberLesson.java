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

  /** A group with what may be chosen and what is. */
  private record Group(String field, List<String> codes, String chosen) {
    static Group of(UnaryOperator<String> field, String name, List<String> codes) {
      String code = field.apply(name);
      return new Group(name, codes, codes.contains(code) ? code : "");
    }

    /** What is chosen, or what stands in while nothing is. */
    String digits() {
      return chosen.isEmpty()
          ? codes.stream().filter(USUAL::contains).findFirst().orElse(codes.get(0))
          : chosen;
    }
  }

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
    Group material = Group.of(field, "material", materials());
    List<Group> groups =
        List.of(
            material,
            Group.of(field, "shank", shanks()),
            Group.of(field, "shape", shapes()),
            Group.of(field, "characteristic", characteristics(bladed(material.digits()))),
            Group.of(field, "size", NominalSizes.all().stream().map(one -> one.code()).toList()));
    List<String> whole = groups.stream().map(Group::digits).toList();
    NumberExplanation explained = number(whole).explain();
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      Group group = groups.get(i);
      Map<String, String> options = new LinkedHashMap<>();
      for (String code : group.codes()) {
        List<String> with = new ArrayList<>(whole);
        with.set(i, code);
        options.put(code, meaning(say, number(with).explain(), i));
      }
      parts.add(
          new Part(
              group.field(),
              group.digits(),
              !group.chosen().isEmpty(),
              NumberWords.role(say, explained.groups().get(i)),
              meaning(say, explained, i),
              options));
    }
    return new NumberLesson(parts, NumberAnswer.of(say, number(whole).encode(), ""));
  }

  /** The number so far, a dot for every digit that is not chosen. */
  public String soFar() {
    return String.join(
        " ",
        parts.stream().map(one -> one.chosen() ? one.digits() : "\u00b7\u00b7\u00b7").toList());
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
