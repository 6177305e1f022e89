package kerfwright.catalogue.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;

/**
 * The discrepancy of every family, fitted on calibration studies. Generated together with
 * docs/VALIDATION.md, which says how it holds on studies left out.
 */
public record Discrepancies(Map<Family, Discrepancy> byFamily) {
  /** Where it stands among the packaged tables. */
  public static final String FILE = "evidence/discrepancy.csv";

  private static final List<String> HEADER =
      List.of("family", "between", "freedom", "within", "studies", "figures");

  public Discrepancies {
    byFamily = Map.copyOf(byFamily);
  }

  /** The table packaged with the catalogue. */
  public static Discrepancies packaged() {
    return Packaged.DISCREPANCIES;
  }

  /** Reads the packaged table. */
  public static Discrepancies load(Faults faults) {
    Map<Family, Discrepancy> read = new EnumMap<>(Family.class);
    for (Row row : Table.read(FILE, HEADER, faults)) {
      String id = row.oneOf("family", Family.IDS);
      Double between = row.number("between");
      Double freedom = row.number("freedom");
      Double within = row.number("within");
      Double studies = row.number("studies");
      Double figures = row.number("figures");
      if (between == null || freedom == null || within == null || studies == null) {
        row.fault("between", "between, freedom, within and studies must all be given");
      } else if (between <= 0 || within <= 0 || freedom < 1) {
        row.fault("between", "spreads must be above zero, degrees of freedom at least one");
      } else if (row.sound()) {
        Family family = Family.values()[Family.IDS.indexOf(id)];
        read.put(
            family,
            new Discrepancy(
                family,
                between,
                freedom,
                within,
                studies.intValue(),
                Objects.requireNonNullElse(figures, 0.0).intValue()));
      }
    }
    for (Family family : Family.values()) {
      if (!read.containsKey(family)) {
        faults.add(FILE, 0, "family", "'" + family.id() + "' is missing");
      }
    }
    return new Discrepancies(read);
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
        .collect(Collectors.joining("", String.join(",", HEADER) + "\n", ""));
  }

  private static final class Packaged {
    static final Discrepancies DISCREPANCIES = read();

    private static Discrepancies read() {
      Faults faults = new Faults();
      Discrepancies discrepancies = load(faults);
      faults.throwIfAny();
      return discrepancies;
    }
  }
}
