package kerfwright.catalogue.operation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Reads one row of {@code operation/values.csv}; its README says what each column holds. */
final class OperationRows {
  static final List<String> COLUMNS =
      List.of(
          "order",
          "task",
          "from",
          "to",
          "kind",
          "face",
          "terms",
          "kinds",
          "forms",
          "grits",
          "least_blades",
          "most_blades",
          "safe_end",
          "least_head",
          "most_head",
          "reach",
          "other_tools",
          "abrasive",
          "speeds",
          "least_rpm",
          "most_rpm",
          "least_n",
          "most_n",
          "water",
          "least_ml_per_min",
          "stroke",
          "contact_s",
          "pause_s",
          "heat",
          "spare",
          "when",
          "repeat",
          "least_seconds",
          "least_chair_s",
          "most_chair_s",
          "says");
  private static final List<String> FORMULAS =
      List.of("terms", "least_head", "most_head", "reach", "spare", "when", "says");
  private static final int ANY_BLADES = 99;

  private OperationRows() {}

  static Operation operation(DataRow row) {
    String[] id = row.text("id").split("\\.", 2);
    if (id.length < 2) {
      row.fault("id", Message.of("fault.cell-operation", row.text("id")));
      id = new String[] {id[0], id[0]};
    }
    return new Operation(
        id[0],
        row.whole("order").orElse(1),
        id[1],
        row.requiredOneOf("task", Task.values(), Task::id),
        row.required("from"),
        row.text("to"),
        geometry(row),
        window(row),
        operating(row, id),
        row.requiredOneOf("heat", HeatTarget.values(), HeatTarget::id),
        formula(row, "spare"),
        condition(row),
        row.whole("repeat").orElse(1),
        row.number("least_seconds").orElse(0),
        boxed(row, "least_chair_s"),
        boxed(row, "most_chair_s"),
        formulas(row, "says"),
        row.provenance());
  }

  /** The same, with every name its formulas use checked. */
  static Operation operation(DataRow row, Predicate<String> known) {
    Operation read = operation(row);
    Set<String> own = read.geometry().terms().keySet();
    for (String column : FORMULAS) {
      parts(row, column).stream()
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
    for (String term : parts(row, "terms")) {
      String[] sides = term.split("=", 2);
      Formula formula = sides.length < 2 ? null : parsed(row, "terms", sides[1]);
      if (formula == null) {
        row.fault("terms", Message.of("fault.cell-terms", term));
      } else {
        terms.put(sides[0].strip(), formula);
      }
    }
    return new Geometry(
        row.requiredOneOf("kind", GeometryKind.values(), GeometryKind::id),
        row.text("face"),
        terms);
  }

  private static Window window(DataRow row) {
    return new Window(
        words(row, "kinds", InstrumentKind.values(), InstrumentKind::id),
        words(row, "forms", ShapeFamily.values(), ShapeFamily::id),
        Set.copyOf(words(row, "grits", GritClass.values(), GritClass::id)),
        row.whole("least_blades").orElse(0),
        row.whole("most_blades").orElse(ANY_BLADES),
        row.yes("safe_end"),
        formula(row, "least_head"),
        formula(row, "most_head"),
        formula(row, "reach"),
        parts(row, "other_tools"),
        row.text("abrasive"));
  }

  private static Operating operating(DataRow row, String[] id) {
    return new Operating(
        words(row, "speeds", SpeedClass.values(), SpeedClass::id),
        row.number("least_rpm").orElse(0),
        row.number("most_rpm").orElse(0),
        row.number("least_n").orElse(0),
        row.number("most_n").orElse(0),
        row.requiredOneOf("water", WaterRule.values(), WaterRule::id),
        row.number("least_ml_per_min").orElse(0),
        row.text("stroke"),
        "operation." + String.join(".", id) + ".way",
        row.number("contact_s").orElse(0),
        row.number("pause_s").orElse(0));
  }

  private static String condition(DataRow row) {
    String when = row.text("when");
    if (!when.isEmpty() && !when.equals(Operation.HAND)) {
      parsed(row, "when", when);
    }
    return when;
  }

  private static <E extends Enum<E>> List<E> words(
      DataRow row, String column, E[] constants, Function<E, String> word) {
    List<E> found = new ArrayList<>();
    for (String text : parts(row, column)) {
      E constant = row.constant(column, text.toLowerCase(Locale.ROOT), constants, word);
      if (constant != null) {
        found.add(constant);
      }
    }
    return found;
  }

  private static List<String> parts(DataRow row, String column) {
    return Arrays.stream(row.text(column).split(";"))
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .toList();
  }

  private static @Nullable Formula formula(DataRow row, String column) {
    return row.text(column).isEmpty() ? null : parsed(row, column, row.text(column));
  }

  private static List<Formula> formulas(DataRow row, String column) {
    List<Formula> all = new ArrayList<>();
    for (String part : parts(row, column)) {
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

  private static @Nullable Double boxed(DataRow row, String column) {
    return row.number(column).isPresent() ? row.number(column).getAsDouble() : null;
  }
}
