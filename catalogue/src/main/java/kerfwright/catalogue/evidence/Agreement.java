package kerfwright.catalogue.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;

/**
 * How many of the published findings that no constant rests on the models meet. Generated together
 * with docs/VALIDATION.md, which names them one by one.
 */
public record Agreement(Map<EvidenceCase.About, Count> counts) {
  /** Where it stands among the packaged tables. */
  public static final String FILE = "evidence/agreement.csv";

  private static final List<String> HEADER = List.of("about", "met", "cases");

  /**
   * So many of so many.
   *
   * @param met cases the models meet
   * @param cases all of them
   */
  public record Count(int met, int cases) {
    public Count {
      if (met < 0 || met > cases) {
        throw new IllegalArgumentException(met + " of " + cases + " cannot be met");
      }
    }
  }

  public Agreement {
    counts = Map.copyOf(counts);
  }

  /** The counts packaged with the catalogue. */
  public static Agreement packaged() {
    return Packaged.AGREEMENT;
  }

  /** Reads the packaged counts. */
  public static Agreement load(Faults faults) {
    Map<EvidenceCase.About, Count> counts = new EnumMap<>(EvidenceCase.About.class);
    for (Row row : Table.read(FILE, HEADER, faults)) {
      String about = row.oneOf("about", EvidenceCase.About.IDS);
      Double met = row.number("met");
      Double cases = row.number("cases");
      if (met == null || cases == null || met < 0 || met > cases) {
        row.fault("met", "two counts, the first no greater than the second");
      } else if (row.sound()) {
        counts.put(
            EvidenceCase.About.values()[EvidenceCase.About.IDS.indexOf(about)],
            new Count(met.intValue(), cases.intValue()));
      }
    }
    for (EvidenceCase.About about : EvidenceCase.About.values()) {
      if (!counts.containsKey(about)) {
        faults.add(FILE, 0, "about", "'" + about.id() + "' is missing");
      }
    }
    return new Agreement(counts);
  }

  public Count of(EvidenceCase.About about) {
    return counts.getOrDefault(about, new Count(0, 0));
  }

  /** The table as it is packaged. */
  public String csv() {
    return List.of(EvidenceCase.About.values()).stream()
        .map(about -> about.id() + "," + of(about).met() + "," + of(about).cases() + "\n")
        .collect(Collectors.joining("", String.join(",", HEADER) + "\n", ""));
  }

  private static final class Packaged {
    static final Agreement AGREEMENT = read();

    private static Agreement read() {
      Faults faults = new Faults();
      Agreement agreement = load(faults);
      faults.throwIfAny();
      return agreement;
    }
  }
}
