package kerfwright.planner.casework;

import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/**
 * A field the case left open and the usual value stands in.
 *
 * @param field the field's name in a case file
 * @param sources where the value comes from
 * @param basis how sure it is
 */
public record FilledIn(String field, List<SourceKey> sources, Basis basis) {
  public FilledIn {
    sources = List.copyOf(sources);
  }
}
