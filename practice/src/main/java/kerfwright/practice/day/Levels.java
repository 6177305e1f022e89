package kerfwright.practice.day;

import java.util.Arrays;

/**
 * Levels of the instruments of one type: uses left, capped by the most uses the rest of the day
 * could take. Capping is what pools all instruments that cannot run out any more.
 */
final class Levels implements FlowReader.Ladder {
  private final DayView view;
  private final TypeView type;
  private final int atStart;
  private final int highest;

  Levels(DayView view, TypeView type) {
    this.view = view;
    this.type = type;
    atStart = Arrays.stream(type.longest).max().orElse(0);
    int most = 0;
    for (int u = 0; u < type.units; u++) {
      most = Math.max(most, start(u));
    }
    highest = most;
  }

  int highest() {
    return highest;
  }

  @Override
  public int start(int unit) {
    return Math.min(type.left[unit], atStart);
  }

  @Override
  public int afterUse(int demand, int level) {
    return Math.min(level, type.longest[demand]) - 1;
  }

  @Override
  public int afterLoad(int slot, int level) {
    return Math.min(level, type.longestAfterSlot(slot));
  }

  /** Highest level a clean instrument can have at a demand: an unused one keeps its level. */
  int highestClean(int demand) {
    return highest;
  }

  /** Highest level a dirty instrument can have at a slot. */
  int highestDirty(int slot) {
    int most = 0;
    for (int d = 0; d < type.demands; d++) {
      if (type.readyMin[d] <= view.slotMin[slot]) {
        most = Math.max(most, afterUse(d, highest));
      }
    }
    for (int u = 0; u < type.units; u++) {
      if (!type.clean[u] && type.fromMin[u] <= view.slotMin[slot]) {
        most = Math.max(most, start(u));
      }
    }
    return most;
  }
}
