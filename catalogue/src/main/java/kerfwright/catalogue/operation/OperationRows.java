package kerfwright.catalogue.operation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Materials;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Reads one row of {@code operation/values.csv}; its README says what each column holds. */
final class OperationRows {
  private static final List<String> FORMULAS =
      List.of("terms", "least_head", "most_head", "reach", "spare", "when", "says");
  private static final int ANY_BLADES = 99;

  private static final List<String> TRAITS =
      Materials.packaged().all().stream()
          .flatMap(material -> material.traits().stream())
          .distinct()
          .map(trait -> "#" + trait)
          .toList();
  private static final List<String> LAYERS =
      Stream.concat(Materials.packaged().ids().stream(), Stream.of("any", "chamber", "canal"))
          .toList();

  private OperationRows() {}

  static Operation operation(DataRow row) {
    String[] id = row.text("id").split("\\.", 2);
    if (id.length < 2) {
      row.fault("id", Message.of("fault.cell-operation", row.text("id")));
      id = new String[] {id[0], id[0]};
    }
    return new Operation(
        id[0],
        row.whole("order", 1),
        id[1],
        row.requiredOneOf("task", Task.class),
        layers(row, row.required("from"), "from"),
        layers(row, row.text("to"), "to"),
        geometry(row),
        window(row),
        operating(row, id),
        row.requiredOneOf("heat", HeatTarget.class),
        formula(row, "spare"),
        condition(row),
        row.whole("repeat", 1),
        row.positive("least_seconds", 0),
        row.positive("least_chair_s"),
        row.positive("most_chair_s"),
        formulas(row, "says"),
        row.provenance());
  }

  /** The same, with every name its formulas use checked. */
  static Operation operation(DataRow row, Predicate<String> known) {
    Operation read = operation(row);
    Set<String> own = read.geometry().terms().keySet();
    for (String column : FORMULAS) {
      row.list(column).stream()
          .map(part -> part.substring(part.indexOf('=') + 1))
          .filter(part -> !column.equals("when") || !part.equals(Operation.HAND))
          .flatMap(OperationRows::names)
          .filter(name -> !own.contains(name) && !known.test(name))
          .forEach(name -> row.fault(column, Message.of("fault.formula-name", name)));
    }
    return read;
  }

  private static Stream<String> names(String formula) {
    try {
      return Formula.of(formula).names().stream();
    } catch (IllegalArgumentException toldAlready) {
      return Stream.of();
    }
  }

  private static Geometry geometry(DataRow row) {
    Map<String, Formula> terms = new LinkedHashMap<>();
    for (String term : row.list("terms")) {
      String[] sides = term.split("=", 2);
      Formula formula = sides.length < 2 ? null : parsed(row, "terms", sides[1]);
      if (formula == null) {
        row.fault("terms", Message.of("fault.cell-terms", term));
      } else {
        terms.put(sides[0].strip(), formula);
      }
    }
    return new Geometry(row.requiredOneOf("kind", GeometryKind.class), row.text("face"), terms);
  }

  private static Window window(DataRow row) {
    return new Window(
        row.each("kinds", InstrumentKind.class),
        row.each("forms", ShapeFamily.class),
        Set.copyOf(row.each("grits", GritClass.class)),
        row.whole("least_blades", 0),
        row.whole("most_blades", ANY_BLADES),
        row.yes("safe_end"),
        formula(row, "least_head"),
        formula(row, "most_head"),
        formula(row, "reach"),
        row.list("other_tools"),
        row.text("abrasive"));
  }

  private static Operating operating(DataRow row, String[] id) {
    return new Operating(
        row.each("speeds", SpeedClass.class),
        row.positive("least_rpm", 0),
        row.positive("most_rpm", 0),
        row.positive("least_n", 0),
        row.positive("most_n", 0),
        row.requiredOneOf("water", WaterRule.class),
        row.positive("least_ml_per_min", 0),
        row.text("stroke"),
        "operation." + String.join(".", id) + ".way",
        row.positive("contact_s", 0),
        row.positive("pause_s", 0));
  }

  /** Materials by id or by trait, or places of a tooth, between bars. */
  private static String layers(DataRow row, String cell, String column) {
    for (String word : cell.isEmpty() ? new String[0] : cell.split("\\|")) {
      row.known(column, word, word.startsWith("#") ? TRAITS : LAYERS);
    }
    return cell;
  }

  private static String condition(DataRow row) {
    String when = row.text("when");
    if (!when.isEmpty() && !when.equals(Operation.HAND)) {
      parsed(row, "when", when);
    }
    return when;
  }

  private static @Nullable Formula formula(DataRow row, String column) {
    return row.text(column).isEmpty() ? null : parsed(row, column, row.text(column));
  }

  private static List<Formula> formulas(DataRow row, String column) {
    List<Formula> all = new ArrayList<>();
    for (String part : row.list(column)) {
      Formula formula = parsed(row, column, part);
      if (formula != null) {
        all.add(formula);
      }
    }
    return all;
  }

  private static @Nullable Formula parsed(DataRow row, String column, String text) {
    try {
      return Formula.of(text);
    } catch (Formula.Unreadable unreadable) {
      row.fault(column, unreadable.told());
      return null;
    }
  }
}
