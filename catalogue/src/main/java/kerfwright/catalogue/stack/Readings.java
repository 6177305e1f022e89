package kerfwright.catalogue.stack;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** How far a reading may be off, and which share of the dentine decay of a depth takes. */
public final class Readings {
  private static final Readings PACKAGED =
      new Readings(Topic.byId(Topic.read("stack/readings.csv", Readings::reading), Reading::id));

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
      String id, double low, double typical, double high, List<SourceKey> sources, Basis basis) {}

  private Readings(Map<String, Reading> byId) {
    this.byId = byId;
  }

  public static Readings packaged() {
    return PACKAGED;
  }

  private static @Nullable Reading reading(DataRow row) {
    row.oneOf("unit", List.of("mm", "share"));
    Numbers numbers = row.numbers();
    Double typical = numbers.typical();
    if (typical == null) {
      row.fault("typical", "must be given");
      return null;
    }
    return new Reading(
        row.text("id"),
        Objects.requireNonNullElse(numbers.low(), typical),
        typical,
        Objects.requireNonNullElse(numbers.high(), typical),
        row.keys("source"),
        row.basis());
  }

  /** The figure of an id of the file. */
  public Reading get(String id) {
    Reading reading = byId.get(id);
    if (reading == null) {
      throw new IllegalArgumentException("There is no reading '" + id + "'");
    }
    return reading;
  }
}
