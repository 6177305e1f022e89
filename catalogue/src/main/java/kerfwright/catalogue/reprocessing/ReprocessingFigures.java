package kerfwright.catalogue.reprocessing;

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
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** Published and usual figures of reprocessing. */
public final class ReprocessingFigures {
  private static final List<String> HEADER =
      List.of(
          "id",
          "quantity",
          "item",
          "low",
          "typical",
          "high",
          "unit",
          "conditions",
          "source",
          "locator",
          "basis",
          "note");
  private static final List<String> UNITS =
      List.of(
          "%",
          "% of instruments",
          "L",
          "cycles",
          "days",
          "g",
          "min",
          "none",
          "patients",
          "per load",
          "per week",
          "s",
          "tooth preparations",
          "use");

  private final List<ReprocessingFigure> figures;

  private ReprocessingFigures(List<ReprocessingFigure> figures) {
    this.figures = List.copyOf(figures);
  }

  public static ReprocessingFigures packaged() {
    return Packaged.FIGURES;
  }

  public static ReprocessingFigures load(Sources sources, Faults faults) {
    List<ReprocessingFigure> figures = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("reprocessing/values.csv", HEADER, faults)) {
      String id = row.uniqueId("id", seen);
      Numbers numbers = row.numbers();
      String unit = row.oneOf("unit", UNITS);
      Basis basis = row.basis();
      List<SourceKey> keys = sources.keys(row, "source");
      if (keys.isEmpty() && basis != Basis.PROJECT_SETTING) {
        row.fault("source", "must name a source, or the basis must be project-setting");
      }
      if (row.sound()) {
        figures.add(
            new ReprocessingFigure(
                id,
                row.text("quantity"),
                row.text("item"),
                numbers,
                unit,
                row.text("conditions"),
                keys,
                basis,
                row.text("note")));
      }
    }
    return new ReprocessingFigures(figures);
  }

  public List<ReprocessingFigure> all() {
    return figures;
  }

  public Optional<ReprocessingFigure> find(String id) {
    return figures.stream().filter(f -> f.id().equals(id)).findFirst();
  }

  /** Figures of one quantity, e.g. step-minutes. */
  public List<ReprocessingFigure> of(String quantity) {
    return figures.stream().filter(f -> f.quantity().equals(quantity)).toList();
  }

  private static final class Packaged {
    static final ReprocessingFigures FIGURES = read();

    private static ReprocessingFigures read() {
      Faults faults = new Faults();
      ReprocessingFigures figures = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return figures;
    }
  }
}
