package kerfwright.catalogue.data;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.BadDataException;
import kerfwright.catalogue.table.DataFault;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Message;

/**
 * The rows of one packaged {@code values.csv} and every fault found while reading it.
 *
 * @param file path of the file within the catalogue
 * @param readable the rows that could be read
 * @param faults what is wrong; empty in a sound file
 */
public record Topic<T>(String file, List<T> readable, List<DataFault> faults) {
  /** Columns every file carries after its own. */
  public static final List<String> STANDING =
      List.of("sources", "locator", "basis", "confidence", "note");

  public Topic {
    readable = List.copyOf(readable);
    faults = List.copyOf(faults);
  }

  /** All rows, or one exception with all faults. */
  public List<T> rows() {
    if (!faults.isEmpty()) {
      throw new BadDataException(faults);
    }
    return readable;
  }

  /**
   * Reads {@code <topic>/values.csv}; its header must be {@code id}, the given columns, then {@link
   * #STANDING}, and its source keys must stand in the register.
   */
  public static <T> Topic<T> read(String topic, List<String> own, Function<DataRow, T> toValue) {
    return readFile(topic + "/values.csv", own, toValue);
  }

  /** The same of any packaged file, e.g. {@code operation/variants.csv}. */
  public static <T> Topic<T> readFile(String file, List<String> own, Function<DataRow, T> toValue) {
    Faults faults = new Faults();
    return of(file, Table.read(file, header(own), faults), faults, toValue);
  }

  /** The same of a file outside the program; one that cannot be read is a fault. */
  public static <T> Topic<T> readFile(Path file, List<String> own, Function<DataRow, T> toValue) {
    try (Reader text = Files.newBufferedReader(file)) {
      return parse(file.toString(), text, own, toValue);
    } catch (IOException unreadable) {
      Message expected = Message.of("fault.table-unreadable");
      return new Topic<>(
          file.toString(), List.of(), List.of(new DataFault(file.toString(), 0, "-", expected)));
    }
  }

  static <T> Topic<T> parse(
      String file, Reader text, List<String> own, Function<DataRow, T> toValue) {
    Faults faults = new Faults();
    return of(file, Table.parse(file, text, header(own), faults), faults, toValue);
  }

  private static <T> Topic<T> of(
      String file, List<Row> rows, Faults faults, Function<DataRow, T> toValue) {
    List<T> values = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : rows) {
      row.uniqueId("id", ids);
      T value = toValue.apply(new DataRow(row, Register.SOURCES));
      if (row.sound()) {
        values.add(value);
      }
    }
    List<DataFault> all = new ArrayList<>(Register.FAULTS.found());
    all.addAll(faults.found());
    return new Topic<>(file, values, all);
  }

  /** The register of sources, read once for all topics; its faults are faults of each. */
  private static final class Register {
    static final Faults FAULTS = new Faults();
    static final Sources SOURCES = Sources.load(FAULTS);
  }

  private static List<String> header(List<String> own) {
    List<String> header = new ArrayList<>();
    header.add("id");
    header.addAll(own);
    header.addAll(STANDING);
    return header;
  }
}
