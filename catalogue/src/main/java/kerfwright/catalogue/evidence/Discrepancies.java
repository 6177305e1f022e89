package kerfwright.catalogue.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Table;

/**
 * The discrepancy of every family, fitted on calibration studies. Generated together with
 * docs/VALIDATION.md, which says how it holds on studies left out.
 */
public record Discrepancies(Map<Family, Discrepancy> byFamily) {
  /** Where it stands among the packaged tables. */
  public static final String FILE = "evidence/discrepancy.csv";

  private static final Discrepancies PACKAGED = Topic.sound(Discrepancies::read);

  public Discrepancies {
    byFamily = Map.copyOf(byFamily);
  }

  /** The table packaged with the catalogue. */
  public static Discrepancies packaged() {
    return PACKAGED;
  }

  private static Discrepancies read(Faults faults) {
    Map<Family, Discrepancy> read = new EnumMap<>(Family.class);
    Topic.read(FILE, faults, Discrepancies::discrepancy)
        .forEach(one -> read.put(one.family(), one));
    for (Family family : Family.values()) {
      if (!read.containsKey(family)) {
        faults.add(FILE, 0, "family", "'" + family.id() + "' is missing");
      }
    }
    return new Discrepancies(read);
  }

  private static Discrepancy discrepancy(DataRow row) {
    double freedom = row.requiredPositive("freedom");
    if (freedom < 1) {
      row.expected("freedom", "at least one");
    }
    return new Discrepancy(
        row.requiredOneOf("family", Family.class),
        row.requiredPositive("between"),
        Math.max(1, freedom),
        row.requiredPositive("within"),
        count(row, "studies"),
        count(row, "figures"));
  }

  private static int count(DataRow row, String column) {
    row.required(column);
    return Objects.requireNonNullElse(row.number(column), 0.0).intValue();
  }

  public Discrepancy of(Family family) {
    return Objects.requireNonNull(byFamily.get(family), family::id);
  }

  /** The table as it is packaged. */
  public String csv() {
    return List.of(Family.values()).stream()
        .map(this::of)
        .map(
            d ->
                String.format(
                    Locale.ROOT,
                    "%s,%.3f,%.1f,%.3f,%d,%d\n",
                    d.family().id(),
                    d.between(),
                    d.freedom(),
                    d.within(),
                    d.studies(),
                    d.figures()))
        .collect(Collectors.joining("", String.join(",", Table.header(FILE)) + "\n", ""));
  }
}
