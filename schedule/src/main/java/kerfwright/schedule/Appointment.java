package kerfwright.schedule;

import java.util.ArrayList;
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
 * @param details what is known of some needs: substitutes, and how much is asked of the instrument
 */
public record Appointment(
    String id,
    int startMin,
    int endMin,
    List<String> needs,
    @Nullable String chair,
    List<Need> details) {
  public Appointment {
    needs = List.copyOf(needs);
    details = List.copyOf(details);
  }

  public Appointment(String id, int startMin, int endMin, List<String> needs) {
    this(id, startMin, endMin, needs, null, List.of());
  }

  public Appointment(
      String id, int startMin, int endMin, List<String> needs, @Nullable String chair) {
    this(id, startMin, endMin, needs, chair, List.of());
  }

  /** An appointment of which every need is known in detail. */
  public static Appointment of(
      String id, int startMin, int endMin, @Nullable String chair, List<Need> details) {
    return new Appointment(
        id, startMin, endMin, details.stream().map(Need::type).toList(), chair, details);
  }

  public int lengthMin() {
    return endMin - startMin;
  }

  /** What is known of one need. */
  public Need detail(String type) {
    return details.stream()
        .filter(n -> n.type().equals(type))
        .findFirst()
        .orElseGet(() -> Need.of(type));
  }

  /** The same appointment at another time. */
  public Appointment movedTo(int newStartMin, int newEndMin) {
    return new Appointment(id, newStartMin, newEndMin, needs, chair, details);
  }

  /** The same appointment in another chair. */
  public Appointment inChair(@Nullable String other) {
    return new Appointment(id, startMin, endMin, needs, other, details);
  }

  /** The same appointment with another type in the place of one. */
  public Appointment with(String type, String instead) {
    List<String> changed = new ArrayList<>(needs);
    changed.replaceAll(one -> one.equals(type) ? instead : one);
    double asked = detail(type).lifeAsked();
    List<Need> known = new ArrayList<>(details);
    known.replaceAll(n -> n.type().equals(type) ? new Need(instead, asked, List.of()) : n);
    return new Appointment(id, startMin, endMin, changed, chair, known);
  }
}
