package kerfwright.catalogue.data;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Message;

/**
 * Reads tables row by row. A row becomes a value, or null where it cannot; one with a fault is left
 * out. Ids must be unique.
 */
public final class Topic {
  private Topic() {}

  /**
   * The rows of a packaged table.
   *
   * @throws kerfwright.catalogue.table.BadDataException with every fault in it
   */
  public static <T> List<T> read(String file, Function<DataRow, T> toValue) {
    return sound(faults -> read(file, faults, toValue));
  }

  /** What is read of several packaged tables; throws with the faults of all of them. */
  public static <T> T sound(Function<Faults, T> reader) {
    Faults faults = new Faults();
    T read = reader.apply(faults);
    faults.throwIfAny();
    return read;
  }

  /** The sound rows of a packaged table. */
  public static <T> List<T> read(String file, Faults faults, Function<DataRow, T> toValue) {
    return values(Table.read(file, faults), toValue);
  }

  /** The same of a file outside the program, whose header is that of a packaged one. */
  public static <T> List<T> read(
      Path file, String packaged, Faults faults, Function<DataRow, T> toValue) {
    try (Reader text = Files.newBufferedReader(file)) {
      return values(Table.parse(file.toString(), text, Table.header(packaged), faults), toValue);
    } catch (IOException unreadable) {
      faults.add(file.toString(), 0, "-", Message.of("fault.table-unreadable"));
      return List.of();
    }
  }

  /** Values by their id, in their order. */
  public static <T> Map<String, T> byId(List<T> values, Function<T, String> id) {
    Map<String, T> byId = new LinkedHashMap<>();
    values.forEach(value -> byId.put(id.apply(value), value));
    return byId;
  }

  /** The values of rows. */
  public static <T> List<T> values(List<Row> rows, Function<DataRow, T> toValue) {
    List<T> values = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : rows) {
      if (row.header().contains("id")) {
        row.uniqueId("id", ids);
      }
      T value = toValue.apply(new DataRow(row));
      if (value != null && row.sound()) {
        values.add(value);
      }
    }
    return List.copyOf(values);
  }
}
