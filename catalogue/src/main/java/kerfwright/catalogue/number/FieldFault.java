package kerfwright.catalogue.number;

import java.util.List;
import kerfwright.catalogue.Remark;

/**
 * Why a row names no usable instrument.
 *
 * @param field column, as in the drawer file
 * @param found what stands there, empty where it is blank
 * @param expected what was expected, or what it contradicts
 * @param nearest nearest valid entries, may be empty
 */
public record FieldFault(String field, String found, Remark expected, List<String> nearest) {
  public FieldFault {
    nearest = List.copyOf(nearest);
  }
}
