package kerfwright.catalogue.size;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.Formula;
import kerfwright.quantity.Length;

/**
 * Usual sizes: what formulas of operations take, and what a case that tells no opening gets. Of the
 * rows that speak of a place the most exact one stands: variant before procedure before all, tooth
 * before class before front or back.
 */
public final class UsualSizes {
  private static final UsualSizes PACKAGED =
      Topic.sound(
          faults ->
              new UsualSizes(
                  Topic.read("size/values.csv", faults, UsualSizes::size),
                  Topic.read("size/outlines.csv", faults, UsualSizes::outline),
                  Topic.read("size/least.csv", faults, UsualSizes::least)));

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
    return PACKAGED;
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
        row.positive("low"),
        value,
        row.positive("high"),
        row.required("unit"),
        row.provenance());
  }

  private static UsualOutline outline(DataRow row) {
    return new UsualOutline(
        row.list("scope"),
        row.list("teeth"),
        row.whole("least_age"),
        row.whole("most_age"),
        row.required("shape"),
        Length.ofMillimetres(row.requiredPositive("length_mm")),
        Length.ofMillimetres(row.requiredPositive("width_mm")),
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
            : Optional.of(Length.ofMillimetres(row.requiredPositive("least_mm"))),
        row.millimetres("typical_mm"),
        row.provenance());
  }
}
