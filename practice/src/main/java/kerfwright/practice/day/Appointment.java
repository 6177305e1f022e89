package kerfwright.practice.day;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One appointment and the instrument types its tray needs, one instrument of each.
 *
 * @param id the practice's own reference, never a name
 * @param startMin start, minutes from the start of the day
 * @param endMin end; its instruments are dirty from then on
 * @param needs instrument types, each named once
 * @param chair the chair, where known; two appointments of one chair must not overlap
 */
public record Appointment(
    String id, int startMin, int endMin, List<String> needs, @Nullable String chair) {
  public Appointment {
    needs = List.copyOf(needs);
  }

  public Appointment(String id, int startMin, int endMin, List<String> needs) {
    this(id, startMin, endMin, needs, null);
  }

  /** The same appointment at another time. */
  public Appointment movedTo(int newStartMin, int newEndMin) {
    return new Appointment(id, newStartMin, newEndMin, needs, chair);
  }
}
