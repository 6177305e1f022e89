package kerfwright.catalogue.stack;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** How far a reading may be off, and which share of the dentine decay of a depth takes. */
public final class Readings {
  private static final List<String> HEADER =
      List.of("id", "low", "typical", "high", "unit", "source", "locator", "basis", "note");

  private final Map<String, Reading> byId;

  /**
   * One figure.
   *
   * @param low low end; the typical one where none is told
   * @param typical in the unit of the row, mm or a share
   * @param high high end; the typical one where none is told
   * @param sources where it comes from
   * @param basis how sure it is
   */
  public record Reading(
      double low, double typical, double high, List<SourceKey> sources, Basis basis) {
    public Reading {
      sources = List.copyOf(sources);
    }
  }

  private Readings(Map<String, Reading> byId) {
    this.byId = byId;
  }

  public static Readings packaged() {
    return Packaged.READINGS;
  }

  public static Readings load(Sources sources, Faults faults) {
    Map<String, Reading> byId = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("stack/readings.csv", HEADER, faults)) {
      String id = row.uniqueId("id", seen);
      row.oneOf("unit", List.of("mm", "share"));
      Numbers numbers = row.numbers();
      Double typical = numbers.typical();
      Double low = numbers.low();
      Double high = numbers.high();
      List<SourceKey> keys = sources.keys(row, "source");
      Basis basis = row.basis();
      if (typical == null) {
        row.fault("typical", "must be given");
      } else if (row.sound()) {
        byId.put(
            id,
            new Reading(
                low == null ? typical : low, typical, high == null ? typical : high, keys, basis));
      }
    }
    return new Readings(byId);
  }

  /** The figure of an id of the file. */
  public Reading get(String id) {
    Reading reading = byId.get(id);
    if (reading == null) {
      throw new IllegalArgumentException("There is no reading '" + id + "'");
    }
    return reading;
  }

  private static final class Packaged {
    static final Readings READINGS = read();

    private static Readings read() {
      Faults faults = new Faults();
      Readings readings = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return readings;
    }
  }
}
