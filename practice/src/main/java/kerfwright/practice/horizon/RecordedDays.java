package kerfwright.practice.horizon;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.schedule.Need;

/**
 * Days as the cut record tells them: what was used on one tooth of one case in one day is one
 * appointment, from its first use to a while after its last.
 *
 * <p>Left out: what the record does not hold, above all how long a patient really sat there. So an
 * appointment lasts at least {@link #LEAST_MIN} and goes on {@link #AFTER_MIN} after the last use
 * (project settings); where more would go on at once than there are chairs, the later one waits.
 */
public final class RecordedDays {
  /** From so many days on the record tells enough; a project setting, two working weeks. */
  public static final int ENOUGH = 10;

  static final int LEAST_MIN = 30;
  static final int AFTER_MIN = 10;
  private static final int GRID_MIN = 5;

  private RecordedDays() {}

  /**
   * One use.
   *
   * @param at when, by the practice's clock
   * @param visit case and tooth
   * @param type type of the instrument
   */
  public record Use(LocalDateTime at, String visit, String type) {}

  /** The appointments of each day with uses, oldest day first; what lies outside opening is out. */
  public static List<List<Booking>> of(List<Use> uses, DaySetting setting) {
    Map<LocalDate, Map<String, Visit>> days = new TreeMap<>();
    for (Use use : uses) {
      days.computeIfAbsent(use.at().toLocalDate(), any -> new TreeMap<>())
          .computeIfAbsent(use.visit(), any -> new Visit())
          .add(setting.minute(use.at().toLocalTime()), use.type());
    }
    List<List<Booking>> all = new ArrayList<>();
    days.forEach((date, visits) -> all.add(booked(visits, setting)));
    all.removeIf(List::isEmpty);
    return all;
  }

  private static List<Booking> booked(Map<String, Visit> visits, DaySetting setting) {
    List<Map.Entry<String, Visit>> inOrder = new ArrayList<>(visits.entrySet());
    inOrder.sort(Comparator.comparingInt(one -> one.getValue().firstMin));
    Map<String, Integer> free = new HashMap<>();
    List<Booking> day = new ArrayList<>();
    for (Map.Entry<String, Visit> one : inOrder) {
      Visit visit = one.getValue();
      String chair =
          setting.chairs().stream()
              .min(Comparator.comparingInt(c -> Math.max(visit.start(), free.getOrDefault(c, 0))))
              .orElseThrow();
      int start = Math.max(visit.start(), free.getOrDefault(chair, 0));
      int end = Math.min(setting.lengthMin(), start + visit.lengthMin());
      if (visit.start() < 0 || start >= end) {
        continue;
      }
      free.put(chair, end);
      LocalTime opens = setting.opens();
      List<Need> needs = visit.types.stream().map(t -> new Need(t, 0, List.of())).toList();
      day.add(
          new Booking(
              "A" + (day.size() + 1),
              chair,
              opens.plusMinutes(start),
              opens.plusMinutes(end),
              one.getKey(),
              "",
              "",
              null,
              needs));
    }
    return day;
  }

  private static final class Visit {
    private final Set<String> types = new LinkedHashSet<>();
    private int firstMin = Integer.MAX_VALUE;
    private int lastMin = Integer.MIN_VALUE;

    void add(int minute, String type) {
      types.add(type);
      firstMin = Math.min(firstMin, minute);
      lastMin = Math.max(lastMin, minute);
    }

    int start() {
      return Math.floorDiv(firstMin, GRID_MIN) * GRID_MIN;
    }

    int lengthMin() {
      int asked = Math.max(LEAST_MIN, lastMin + AFTER_MIN - start());
      return (asked + GRID_MIN - 1) / GRID_MIN * GRID_MIN;
    }
  }
}
