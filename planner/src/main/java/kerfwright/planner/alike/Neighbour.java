package kerfwright.planner.alike;

import java.util.List;
import kerfwright.planner.casework.DrawerInstrument;

/**
 * An instrument like the wanted one.
 *
 * @param instrument the instrument
 * @param score 100 where it does the same in everything compared, falling towards 0
 * @param differences what differs, what weighs most first
 */
public record Neighbour(DrawerInstrument instrument, double score, List<Difference> differences) {
  public Neighbour {
    differences = List.copyOf(differences);
  }

  /** Whether it can do everything the wanted one can. */
  public boolean standsIn() {
    return differences.stream().noneMatch(d -> d.effect() == Difference.Effect.STOPS);
  }
}
