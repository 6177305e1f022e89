package kerfwright.catalogue.data;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** One row being read: a cell that does not fit is noted as a fault and reading goes on. */
public final class DataRow {
  private final String file;
  private final long line;
  private final CSVRecord record;
  private final List<DataFault> faults;

  DataRow(String file, long line, CSVRecord record, List<DataFault> faults) {
    this.file = file;
    this.line = line;
    this.record = record;
    this.faults = faults;
  }

  /** The cell, blank as an empty text. */
  public String text(String column) {
    return record.get(column).strip();
  }

  /** The cell, which must not be blank. */
  public String required(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      fault(column, text, "a value");
    }
    return text;
  }

  /** A positive number, or nothing where the cell is blank. */
  public OptionalDouble number(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value) && value > 0) {
        return OptionalDouble.of(value);
      }
    } catch (NumberFormatException notANumber) {
      // falls through to the fault below
    }
    fault(column, text, "a number above zero");
    return OptionalDouble.empty();
  }

  /** A positive number that must be there. */
  public double requiredNumber(String column) {
    OptionalDouble number = number(column);
    if (number.isEmpty() && text(column).isEmpty()) {
      fault(column, "", "a number above zero");
    }
    return number.orElse(1);
  }

  /** A positive whole number, or nothing where the cell is blank. */
  public OptionalInt whole(String column) {
    OptionalDouble number = number(column);
    if (number.isEmpty()) {
      return OptionalInt.empty();
    }
    if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
      fault(column, text(column), "a whole number");
    }
    return OptionalInt.of((int) number.getAsDouble());
  }

  /** Three digits. */
  public String group(String column) {
    String text = text(column);
    if (!text.matches("\\d{3}")) {
      fault(column, text, "three digits");
    }
    return text;
  }

  /** yes or no. */
  public boolean yes(String column) {
    String text = text(column);
    if (!text.equals("yes") && !text.equals("no") && !text.isEmpty()) {
      fault(column, text, "yes, no or blank");
    }
    return text.equals("yes");
  }

  /** One of the constants, by the word the files use for it; blank gives null. */
  public <E extends Enum<E>> @Nullable E oneOf(
      String column, E[] constants, Function<E, String> word) {
    String text = text(column);
    if (text.isEmpty()) {
      return null;
    }
    for (E constant : constants) {
      if (word.apply(constant).equals(text)) {
        return constant;
      }
    }
    List<String> words = Arrays.stream(constants).map(word).toList();
    String hint = NearestName.hint(text, words);
    fault(column, text, hint.isEmpty() ? "one of " + words : "a known word; " + hint);
    return null;
  }

  /** A standing in its own column; blank gives null. */
  public @Nullable Basis basis(String column) {
    return oneOf(column, Basis.values(), b -> b.name().toLowerCase(Locale.ROOT));
  }

  /** The five standing columns; basis, confidence and at least one source are required. */
  public Provenance provenance() {
    Basis basis = basis("basis");
    Confidence confidence = oneOf("confidence", Confidence.values(), Confidence::label);
    if (text("basis").isEmpty()) {
      fault("basis", "", "a basis");
    }
    if (text("confidence").isEmpty()) {
      fault("confidence", "", "high, medium or low");
    }
    List<SourceKey> sources = List.of();
    try {
      sources =
          Arrays.stream(text("sources").split(" +"))
              .filter(key -> !key.isEmpty())
              .map(SourceKey::new)
              .toList();
      if (sources.isEmpty()) {
        fault("sources", "", "at least one source key");
      }
    } catch (IllegalArgumentException e) {
      fault("sources", text("sources"), "source keys separated by spaces");
    }
    return new Provenance(
        sources,
        text("locator"),
        basis == null ? Basis.FROM_MEMORY : basis,
        confidence == null ? Confidence.LOW : confidence,
        text("note"));
  }

  public void fault(String column, String found, String expected) {
    faults.add(new DataFault(file, line, column, found, expected));
  }

  int faultCount() {
    return faults.size();
  }
}
