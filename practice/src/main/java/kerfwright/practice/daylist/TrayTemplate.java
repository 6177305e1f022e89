package kerfwright.practice.daylist;

import java.util.List;
import kerfwright.schedule.Need;

/**
 * A tray the practice uses again and again.
 *
 * @param name what the practice calls it
 * @param minutes how long the appointment usually takes
 * @param needs what lies on it
 */
public record TrayTemplate(String name, int minutes, List<Need> needs) {
  public TrayTemplate {
    needs = List.copyOf(needs);
    if (name.isBlank() || name.length() > 60) {
      throw new IllegalArgumentException("A tray's name has 1 to 60 letters, got '" + name + "'");
    }
    if (minutes < 5 || minutes > 600) {
      throw new IllegalArgumentException("A tray's time is 5 to 600 min, got " + minutes);
    }
  }
}
