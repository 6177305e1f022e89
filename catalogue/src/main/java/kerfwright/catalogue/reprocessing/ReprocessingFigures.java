package kerfwright.catalogue.reprocessing;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Basis;

/** Published and usual figures of reprocessing. */
public final class ReprocessingFigures {
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

  private static final ReprocessingFigures PACKAGED =
      new ReprocessingFigures(Topic.read("reprocessing/values.csv", ReprocessingFigures::figure));

  private final List<ReprocessingFigure> figures;

  private ReprocessingFigures(List<ReprocessingFigure> figures) {
    this.figures = List.copyOf(figures);
  }

  public static ReprocessingFigures packaged() {
    return PACKAGED;
  }

  private static ReprocessingFigure figure(DataRow row) {
    Basis basis = row.basis();
    return new ReprocessingFigure(
        row.text("id"),
        row.text("quantity"),
        row.text("item"),
        row.numbers(),
        row.oneOf("unit", UNITS),
        row.text("conditions"),
        row.sources(basis),
        basis,
        row.text("note"));
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
}
