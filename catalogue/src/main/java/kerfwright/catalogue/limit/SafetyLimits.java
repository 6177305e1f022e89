package kerfwright.catalogue.limit;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Pressure;
import kerfwright.quantity.SourceKey;
import kerfwright.quantity.Temperature;
import kerfwright.quantity.TemperatureDifference;

/** The limits that rest on published figures; a row with any other basis than seen is a fault. */
public final class SafetyLimits {
  private static final List<String> HEADER =
      List.of(
          "id",
          "quantity",
          "low",
          "typical",
          "high",
          "unit",
          "conditions",
          "source",
          "locator",
          "basis",
          "note");

  /** The rows that must be there, with their unit and the column that decides. */
  private static final Map<String, List<String>> NEEDED =
      Map.of(
          "pulp-rise", List.of("K", "typical"),
          "remaining-dentine", List.of("mm", "low"),
          "bone-temperature", List.of("degC", "high"),
          "carbide-flexural-strength", List.of("MPa", "low"));

  private final Map<String, SafetyLimit> byId;

  private SafetyLimits(Map<String, SafetyLimit> byId) {
    this.byId = byId;
  }

  public static SafetyLimits packaged() {
    return Packaged.LIMITS;
  }

  public static SafetyLimits load(Sources sources, Faults faults) {
    return of(Table.read("limit/values.csv", HEADER, faults), sources, faults);
  }

  static SafetyLimits of(List<Row> rows, Sources sources, Faults faults) {
    Map<String, SafetyLimit> byId = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : rows) {
      String id = row.uniqueId("id", seen);
      Numbers numbers = row.numbers();
      List<String> needed = NEEDED.get(id);
      if (needed == null) {
        row.fault("id", "'" + id + "' is none of the limits " + NEEDED.keySet());
      } else {
        row.oneOf("unit", List.of(needed.get(0)));
        if (row.text(needed.get(1)).isEmpty()) {
          row.fault(needed.get(1), "must be given: it decides");
        }
      }
      if (row.basis() != Basis.SEEN) {
        row.fault("basis", "a safety limit may only rest on a figure that was seen");
      }
      List<SourceKey> keys = sources.keys(row, "source");
      if (keys.isEmpty()) {
        row.fault("source", "a safety limit must name its source");
      }
      if (row.sound()) {
        byId.put(
            id,
            new SafetyLimit(
                id,
                row.text("quantity"),
                numbers,
                row.text("unit"),
                row.text("conditions"),
                keys,
                row.text("locator"),
                row.text("note")));
      }
    }
    for (String id : NEEDED.keySet()) {
      if (!seen.contains(id)) {
        faults.add("limit/values.csv", 0, "id", "the limit '" + id + "' is missing");
      }
    }
    return new SafetyLimits(byId);
  }

  public List<SafetyLimit> all() {
    return List.copyOf(byId.values());
  }

  public SafetyLimit get(String id) {
    SafetyLimit limit = byId.get(id);
    if (limit == null) {
      throw new IllegalArgumentException("There is no limit '" + id + "'");
    }
    return limit;
  }

  /** Rise of the pulp temperature above which a plan is changed or refused. */
  public TemperatureDifference pulpRise() {
    return TemperatureDifference.ofKelvins(
        Objects.requireNonNull(get("pulp-rise").numbers().typical()));
  }

  /** Least dentine to be left over a vital pulp. */
  public Length remainingDentine() {
    return Length.ofMillimetres(Objects.requireNonNull(get("remaining-dentine").numbers().low()));
  }

  /** Temperature bone may not hold for a minute. */
  public Temperature boneTemperature() {
    return Temperature.ofCelsius(Objects.requireNonNull(get("bone-temperature").numbers().high()));
  }

  /** Least flexural strength of cemented carbide. */
  public Pressure carbideFlexuralStrength() {
    return Pressure.ofMegapascals(
        Objects.requireNonNull(get("carbide-flexural-strength").numbers().low()));
  }

  private static final class Packaged {
    static final SafetyLimits LIMITS = read();

    private static SafetyLimits read() {
      Faults faults = new Faults();
      SafetyLimits limits = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return limits;
    }
  }
}
