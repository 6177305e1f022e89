package kerfwright.practice.reprocessing;

import java.util.List;
import kerfwright.practice.drawer.Pick;

/**
 * A load as it is put together.
 *
 * @param steriliser which steriliser
 * @param cycle which cycle
 * @param by initials of who starts it
 * @param pouches what goes in
 */
public record NewLoad(String steriliser, Cycle cycle, String by, List<Packed> pouches) {
  /**
   * A pouch.
   *
   * @param set name of the set, empty for single instruments
   * @param contents the instruments as they were seen
   */
  public record Packed(String set, List<Pick> contents) {
    public Packed {
      contents = List.copyOf(contents);
    }
  }

  public NewLoad {
    pouches = List.copyOf(pouches);
  }
}
