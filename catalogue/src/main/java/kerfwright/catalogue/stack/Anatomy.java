package kerfwright.catalogue.stack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** Dimensions of teeth and of restorations, as published or recalled. */
public final class Anatomy {
  private static final List<String> TEETH_HEADER =
      List.of(
          "id",
          "tooth",
          "arch",
          "quantity",
          "landmark",
          "low",
          "typical",
          "high",
          "sd",
          "unit",
          "age_group",
          "n",
          "conditions",
          "source",
          "locator",
          "basis",
          "note");
  private static final List<String> RESTORATION_HEADER =
      List.of(
          "id",
          "quantity",
          "site",
          "restoration",
          "least",
          "low",
          "typical",
          "high",
          "most",
          "unit",
          "source",
          "locator",
          "basis",
          "note");
  private static final List<String> UNITS =
      List.of("mm", "um", "mm2", "mm3", "um/year", "%", "none");

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
    return Packaged.ANATOMY;
  }

  public static Anatomy load(Sources sources, Faults faults) {
    return new Anatomy(loadTeeth(sources, faults), loadRestorations(sources, faults));
  }

  private static List<AnatomyRow> loadTeeth(Sources sources, Faults faults) {
    List<AnatomyRow> rows = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("anatomy/values.csv", TEETH_HEADER, faults)) {
      String id = row.uniqueId("id", seen);
      String arch = row.oneOf("arch", List.of("maxillary", "mandibular", "both"));
      Numbers numbers = row.numbers();
      Double sd = row.number("sd");
      String unit = row.oneOf("unit", UNITS);
      Basis basis = row.basis();
      List<SourceKey> keys = sourced(row, sources, basis);
      if (row.sound()) {
        rows.add(
            new AnatomyRow(
                id,
                row.text("tooth"),
                arch,
                row.text("quantity"),
                row.text("landmark"),
                numbers,
                sd,
                unit,
                row.text("age_group"),
                row.text("n"),
                row.text("conditions"),
                keys,
                basis,
                row.text("note")));
      }
    }
    return rows;
  }

  private static List<RestorationRow> loadRestorations(Sources sources, Faults faults) {
    List<RestorationRow> rows = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("restoration/values.csv", RESTORATION_HEADER, faults)) {
      String id = row.uniqueId("id", seen);
      Numbers numbers = row.numbers();
      Double least = row.number("least");
      Double most = row.number("most");
      if (above(least, numbers.low()) || above(numbers.high(), most)) {
        row.fault("least", "least, low, high and most must rise");
      }
      String unit = row.oneOf("unit", UNITS);
      Basis basis = row.basis();
      List<SourceKey> keys = sourced(row, sources, basis);
      if (row.sound()) {
        rows.add(
            new RestorationRow(
                id,
                row.text("quantity"),
                row.text("site"),
                row.text("restoration"),
                least,
                numbers,
                most,
                unit,
                keys,
                basis,
                row.text("note")));
      }
    }
    return rows;
  }

  private static boolean above(@Nullable Double a, @Nullable Double b) {
    return a != null && b != null && a > b;
  }

  private static List<SourceKey> sourced(Row row, Sources sources, Basis basis) {
    List<SourceKey> keys = sources.keys(row, "source");
    if (keys.isEmpty() && basis != Basis.PROJECT_SETTING) {
      row.fault("source", "must name a source, or the basis must be project-setting");
    }
    return keys;
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

  private static final class Packaged {
    static final Anatomy ANATOMY = read();

    private static Anatomy read() {
      Faults faults = new Faults();
      Anatomy anatomy = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return anatomy;
    }
  }
}
