package kerfwright.catalogue.stack;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Basis;
import org.jspecify.annotations.Nullable;

/** Dimensions of teeth and of restorations, as published or recalled. */
public final class Anatomy {
  private static final List<String> UNITS =
      List.of("mm", "um", "mm2", "mm3", "um/year", "%", "none");

  private static final Anatomy PACKAGED =
      Topic.sound(
          faults ->
              new Anatomy(
                  Topic.read("anatomy/values.csv", faults, Anatomy::tooth),
                  Topic.read("restoration/values.csv", faults, Anatomy::restoration)));

  private final List<AnatomyRow> teeth;
  private final List<RestorationRow> restorations;
  private final Set<String> ids = new HashSet<>();

  private Anatomy(List<AnatomyRow> teeth, List<RestorationRow> restorations) {
    this.teeth = List.copyOf(teeth);
    this.restorations = List.copyOf(restorations);
    teeth.forEach(row -> ids.add(row.id()));
    restorations.forEach(row -> ids.add(row.id()));
  }

  public static Anatomy packaged() {
    return PACKAGED;
  }

  private static AnatomyRow tooth(DataRow row) {
    Basis basis = row.basis();
    return new AnatomyRow(
        row.text("id"),
        row.text("tooth"),
        row.oneOf("arch", List.of("maxillary", "mandibular", "both")),
        row.text("quantity"),
        row.text("landmark"),
        row.numbers(),
        row.number("sd"),
        row.oneOf("unit", UNITS),
        row.text("age_group"),
        row.text("n"),
        row.text("conditions"),
        row.sources(basis),
        basis,
        row.text("note"));
  }

  private static RestorationRow restoration(DataRow row) {
    Numbers numbers = row.numbers();
    Double least = row.number("least");
    Double most = row.number("most");
    if (above(least, numbers.low()) || above(numbers.high(), most)) {
      row.fault("least", "least, low, high and most must rise");
    }
    Basis basis = row.basis();
    return new RestorationRow(
        row.text("id"),
        row.text("quantity"),
        row.text("site"),
        row.text("restoration"),
        least,
        numbers,
        most,
        row.oneOf("unit", UNITS),
        row.sources(basis),
        basis,
        row.text("note"));
  }

  private static boolean above(@Nullable Double a, @Nullable Double b) {
    return a != null && b != null && a > b;
  }

  public List<AnatomyRow> teeth() {
    return teeth;
  }

  public List<RestorationRow> restorations() {
    return restorations;
  }

  /**
   * How deep the chamber lies below the landmark a bur is set from: the cusp tips of a back tooth,
   * the lingual surface of a front one. Empty for primary teeth.
   */
  public Optional<AnatomyRow> toChamber(Tooth tooth) {
    ToothPlace place = ToothPlace.of(tooth);
    if (place.primary()) {
      return Optional.empty();
    }
    if (place.front()) {
      return tooth("lingual-to-chamber-roof-front-both-1");
    }
    if (place.toothClass().equals("premolar")) {
      return tooth("cusp-to-chamber-roof-premolar-both-1");
    }
    return tooth("cusp-to-chamber-roof-m-" + (tooth.upper() ? "upper-1" : "lower-1"));
  }

  public Optional<AnatomyRow> tooth(String id) {
    return teeth.stream().filter(r -> r.id().equals(id)).findFirst();
  }

  public Optional<RestorationRow> restoration(String id) {
    return restorations.stream().filter(r -> r.id().equals(id)).findFirst();
  }

  /** Whether a row of either table has the id. */
  boolean has(String id) {
    return ids.contains(id);
  }
}
