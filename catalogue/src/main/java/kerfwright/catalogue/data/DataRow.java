package kerfwright.catalogue.data;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Row;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** One row being read: a cell that does not fit is noted as a fault and reading goes on. */
public final class DataRow {
  private final Row row;
  private final Sources register;

  DataRow(Row row, Sources register) {
    this.row = row;
    this.register = register;
  }

  /** The cell, blank as an empty text. */
  public String text(String column) {
    return row.text(column);
  }

  /** The cell, which must not be blank. */
  public String required(String column) {
    return row.required(column);
  }

  /** A number above zero, or nothing where the cell is blank. */
  public OptionalDouble number(String column) {
    Double value = row.number(column);
    if (value == null) {
      return OptionalDouble.empty();
    }
    if (value > 0) {
      return OptionalDouble.of(value);
    }
    fault(column, Message.of("fault.cell-above-zero", text(column)));
    return OptionalDouble.empty();
  }

  /** A number above zero that must be there; 1 stands in for a faulty one. */
  public double requiredNumber(String column) {
    row.required(column);
    return number(column).orElse(1);
  }

  /** A whole number above zero, or nothing where the cell is blank. */
  public OptionalInt whole(String column) {
    OptionalDouble number = number(column);
    if (number.isEmpty()) {
      return OptionalInt.empty();
    }
    if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
      fault(column, Message.of("fault.cell-whole", text(column)));
    }
    return OptionalInt.of((int) number.getAsDouble());
  }

  /** Parts of the cell between semicolons. */
  public List<String> list(String column) {
    return row.list(column);
  }

  /** Three digits. */
  public String group(String column) {
    if (!text(column).matches("[0-9]{3}")) {
      expected(column, "three digits");
    }
    return text(column);
  }

  /** True for yes, false for no or blank. */
  public boolean yes(String column) {
    if (!text(column).matches("yes|no|")) {
      fault(column, Message.of("fault.cell-yes", text(column)));
    }
    return text(column).equals("yes");
  }

  /** One of the constants, by the word the files use for it; blank gives null. */
  public <E extends Enum<E>> @Nullable E oneOf(
      String column, E[] constants, Function<E, String> word) {
    return text(column).isEmpty() ? null : constant(column, text(column), constants, word);
  }

  /** The constant of a word in this cell; null where there is none, which is a fault. */
  public <E extends Enum<E>> @Nullable E constant(
      String column, String text, E[] constants, Function<E, String> word) {
    for (E constant : constants) {
      if (word.apply(constant).equals(text)) {
        return constant;
      }
    }
    List<String> words = Arrays.stream(constants).map(word).toList();
    Message told = Message.of("fault.cell-one-of", text, String.join(", ", words));
    row.fault(
        column,
        NearestName.nearest(text, words)
            .map(near -> Message.of("fault.nearest", told, near))
            .orElse(told));
    return null;
  }

  /** One of the constants, which must be there; the first stands in for a faulty cell. */
  public <E extends Enum<E>> E requiredOneOf(
      String column, E[] constants, Function<E, String> word) {
    row.required(column);
    E constant = oneOf(column, constants, word);
    return constant == null ? constants[0] : constant;
  }

  /** A standing in its own column; blank gives null. */
  public @Nullable Basis basis(String column) {
    return oneOf(column, Basis.values(), basis -> basis.id());
  }

  /** The five standing columns; basis, confidence and at least one source are required. */
  public Provenance provenance() {
    List<SourceKey> sources = register.keys(row, "sources");
    row.required("sources");
    return new Provenance(
        sources,
        text("locator"),
        row.basis(),
        requiredOneOf("confidence", Confidence.values(), Confidence::label),
        text("note"));
  }

  /** Notes a fault of a cell. */
  public void fault(String column, Message expected) {
    row.fault(column, expected);
  }

  /** The same of a table that is always packaged, in plain words. */
  public void expected(String column, String expected) {
    row.fault(column, "'" + text(column) + "' must be " + expected);
  }
}
