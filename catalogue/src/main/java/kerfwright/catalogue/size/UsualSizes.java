package kerfwright.catalogue.size;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.Formula;
import kerfwright.catalogue.table.DataFault;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Usual sizes: what formulas of operations take, and what a case that tells no opening gets. Of the
 * rows that speak of a place the most exact one stands: variant before procedure before all, tooth
 * before class before front or back.
 */
public final class UsualSizes {
  private static final List<String> SIZES =
      List.of("name", "scope", "teeth", "low", "value", "high", "unit");
  private static final List<String> OUTLINES =
      List.of("scope", "teeth", "least_age", "most_age", "shape", "length_mm", "width_mm");
  private static final List<String> LEAST =
      List.of("materials", "scope", "teeth", "least_mm", "typical_mm");

  private final List<Size> sizes;
  private final Map<String, List<Size>> byName;
  private final Map<NameAt, Optional<Size>> found = new ConcurrentHashMap<>();
  private final List<UsualOutline> outlines;
  private final List<LeastThickness> least;

  private UsualSizes(List<Size> sizes, List<UsualOutline> outlines, List<LeastThickness> least) {
    this.sizes = sizes;
    this.byName = sizes.stream().collect(Collectors.groupingBy(Size::name));
    this.outlines = outlines;
    this.least = least;
  }

  public static UsualSizes packaged() {
    return Packaged.SIZES;
  }

  /** Every fault of the packaged files; empty in a sound build. */
  public static List<DataFault> dataFaults() {
    return Stream.of(sizeRows().faults(), outlineRows().faults(), leastRows().faults())
        .flatMap(List::stream)
        .distinct()
        .toList();
  }

  /** The usual size of a name, e.g. S_o, at a place; empty where the name is not known there. */
  public Optional<Size> find(String name, Place place) {
    return found.computeIfAbsent(
        new NameAt(name, place),
        asked -> best(byName.getOrDefault(name, List.of()), place, Size::scopes, Size::teeth));
  }

  /** What was asked for before: formulas ask for the same sizes again and again. */
  private record NameAt(String name, Place place) {}

  /**
   * Its value in mm, mm2 or as a plain number.
   *
   * @param others values of the names it is made of; asked first
   * @throws IllegalArgumentException where the name is not known at that place
   */
  public double value(String name, Place place, ToDoubleFunction<String> others) {
    return find(name, place)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "There is no usual size " + name + " for " + place.variant()))
        .value()
        .value(others);
  }

  /** Every size a place has, the most exact of each name. */
  public List<Size> of(Place place) {
    return byName.keySet().stream()
        .sorted()
        .map(name -> find(name, place))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The opening or surface usually worked on; empty where none is told. */
  public Optional<UsualOutline> outline(Place place) {
    return best(
        outlines.stream().filter(o -> o.fits(place.ageYears())).toList(),
        place,
        UsualOutline::scopes,
        UsualOutline::teeth);
  }

  /** What must be left of a material; empty where nothing is told. */
  public Optional<LeastThickness> least(Material material, Place place) {
    return best(
        least.stream().filter(l -> l.materials().stream().anyMatch(material::is)).toList(),
        place,
        LeastThickness::scopes,
        LeastThickness::teeth);
  }

  /** Every row of what must be left. */
  public List<LeastThickness> least() {
    return least;
  }

  /** Every usual size. */
  public List<Size> sizes() {
    return sizes;
  }

  private static <T> Optional<T> best(
      List<T> rows,
      Place place,
      Function<T, List<String>> scopes,
      Function<T, List<String>> teeth) {
    return rows.stream()
        .filter(row -> place.match(scopes.apply(row), teeth.apply(row)) >= 0)
        .max(Comparator.comparingInt(row -> place.match(scopes.apply(row), teeth.apply(row))));
  }

  private static Topic<Size> sizeRows() {
    return Topic.readFile("size/values.csv", SIZES, UsualSizes::size);
  }

  private static Topic<UsualOutline> outlineRows() {
    return Topic.readFile("size/outlines.csv", OUTLINES, UsualSizes::outline);
  }

  private static Topic<LeastThickness> leastRows() {
    return Topic.readFile("size/least.csv", LEAST, UsualSizes::least);
  }

  private static Size size(DataRow row) {
    Formula value = Formula.of("0");
    try {
      value = Formula.of(row.required("value"));
    } catch (Formula.Unreadable unreadable) {
      row.fault("value", unreadable.told());
    }
    return new Size(
        row.required("name"),
        row.list("scope"),
        row.list("teeth"),
        number(row, "low"),
        value,
        number(row, "high"),
        row.required("unit"),
        row.provenance());
  }

  private static UsualOutline outline(DataRow row) {
    return new UsualOutline(
        row.list("scope"),
        row.list("teeth"),
        whole(row, "least_age"),
        whole(row, "most_age"),
        row.required("shape"),
        Length.ofMillimetres(row.requiredNumber("length_mm")),
        Length.ofMillimetres(row.requiredNumber("width_mm")),
        row.provenance());
  }

  private static LeastThickness least(DataRow row) {
    return new LeastThickness(
        row.text("id"),
        row.list("materials"),
        row.list("scope"),
        row.list("teeth"),
        row.text("least_mm").equals("all")
            ? Optional.empty()
            : Optional.of(Length.ofMillimetres(row.requiredNumber("least_mm"))),
        length(row, "typical_mm"),
        row.provenance());
  }

  private static @Nullable Length length(DataRow row, String column) {
    Double number = number(row, column);
    return number == null ? null : Length.ofMillimetres(number);
  }

  private static @Nullable Double number(DataRow row, String column) {
    return row.number(column).isPresent() ? row.number(column).getAsDouble() : null;
  }

  private static @Nullable Integer whole(DataRow row, String column) {
    return row.whole(column).isPresent() ? row.whole(column).getAsInt() : null;
  }

  private static final class Packaged {
    static final UsualSizes SIZES =
        new UsualSizes(sizeRows().rows(), outlineRows().rows(), leastRows().rows());
  }
}
