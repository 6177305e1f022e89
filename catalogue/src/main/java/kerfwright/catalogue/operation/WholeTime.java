package kerfwright.catalogue.operation;

import java.util.List;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;

/**
 * How long a whole procedure took where somebody published it. It is shown beside a plan and never
 * made part of it.
 *
 * @param id e.g. amalgam-large
 * @param variant procedure variant, see {@link Operation#variant}
 * @param leastS low end, s
 * @param mostS high end, s
 * @param provenance sources and standing
 */
public record WholeTime(
    String id, String variant, double leastS, double mostS, Provenance provenance) {
  private static final List<WholeTime> ALL = Topic.read("operation/whole-times.csv", WholeTime::of);

  /** The packaged times, in the order of the file. */
  public static List<WholeTime> all() {
    return ALL;
  }

  /** The times of a variant; empty where none is published. */
  public static List<WholeTime> of(String variant) {
    return all().stream().filter(time -> time.variant().equals(variant)).toList();
  }

  private static WholeTime of(DataRow row) {
    return new WholeTime(
        row.required("id"),
        row.required("variant"),
        row.requiredPositive("least_s"),
        row.requiredPositive("most_s"),
        row.provenance());
  }
}
