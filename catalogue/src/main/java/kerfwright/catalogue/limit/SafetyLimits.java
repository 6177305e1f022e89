package kerfwright.catalogue.limit;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Pressure;
import kerfwright.quantity.Temperature;
import kerfwright.quantity.TemperatureDifference;

/** The limits that rest on published figures; a row with any other basis than seen is a fault. */
public final class SafetyLimits {
  /** The rows that must be there, with their unit and the column that decides. */
  private static final Map<String, List<String>> NEEDED =
      Map.of(
          "pulp-rise", List.of("K", "typical"),
          "remaining-dentine", List.of("mm", "low"),
          "bone-temperature", List.of("degC", "high"),
          "carbide-flexural-strength", List.of("MPa", "low"));

  private static final SafetyLimits PACKAGED =
      Topic.sound(faults -> of(Table.read("limit/values.csv", faults), faults));

  private final Map<String, SafetyLimit> byId;

  private SafetyLimits(Map<String, SafetyLimit> byId) {
    this.byId = byId;
  }

  public static SafetyLimits packaged() {
    return PACKAGED;
  }

  static SafetyLimits of(List<Row> rows, Faults faults) {
    Map<String, SafetyLimit> byId =
        Topic.byId(Topic.values(rows, SafetyLimits::limit), SafetyLimit::id);
    Set<String> seen = rows.stream().map(row -> row.text("id")).collect(Collectors.toSet());
    for (String id : NEEDED.keySet()) {
      if (!seen.contains(id)) {
        faults.add("limit/values.csv", 0, "id", "the limit '" + id + "' is missing");
      }
    }
    return new SafetyLimits(byId);
  }

  private static SafetyLimit limit(DataRow row) {
    String id = row.text("id");
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
    return new SafetyLimit(
        id,
        row.text("quantity"),
        row.numbers(),
        row.text("unit"),
        row.text("conditions"),
        row.sources(),
        row.text("locator"),
        row.text("note"));
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
}
