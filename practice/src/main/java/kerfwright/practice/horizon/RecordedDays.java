package kerfwright.practice.horizon;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
    Map<LocalDate, Map<String, List<Use>>> days =
        uses.stream()
            .collect(
                Collectors.groupingBy(
                    use -> use.at().toLocalDate(),
                    TreeMap::new,
                    Collectors.groupingBy(Use::visit, TreeMap::new, Collectors.toList())));
    return days.values().stream()
        .map(visits -> booked(visits.values(), setting))
        .filter(day -> !day.isEmpty())
        .toList();
  }

  private static List<Booking> booked(Collection<List<Use>> visits, DaySetting setting) {
    List<List<Use>> inOrder = new ArrayList<>(visits);
    inOrder.sort(Comparator.comparingInt(visit -> minutes(visit, setting).getMin()));
    Map<String, Integer> free = new HashMap<>();
    List<Booking> day = new ArrayList<>();
    for (List<Use> visit : inOrder) {
      IntSummaryStatistics minutes = minutes(visit, setting);
      int wanted = Math.floorDiv(minutes.getMin(), GRID_MIN) * GRID_MIN;
      int length = Math.max(LEAST_MIN, minutes.getMax() + AFTER_MIN - wanted);
      String chair =
          setting.chairs().stream()
              .min(Comparator.comparingInt(c -> Math.max(wanted, free.getOrDefault(c, 0))))
              .orElseThrow();
      int start = Math.max(wanted, free.getOrDefault(chair, 0));
      int end =
          Math.min(setting.lengthMin(), start + (length + GRID_MIN - 1) / GRID_MIN * GRID_MIN);
      if (wanted < 0 || start >= end) {
        continue;
      }
      free.put(chair, end);
      day.add(
          new Booking(
              "A" + (day.size() + 1),
              chair,
              setting.opens().plusMinutes(start),
              setting.opens().plusMinutes(end),
              visit.get(0).visit(),
              "",
              "",
              null,
              visit.stream().map(Use::type).distinct().map(Need::of).toList()));
    }
    return day;
  }

  private static IntSummaryStatistics minutes(List<Use> visit, DaySetting setting) {
    return visit.stream()
        .mapToInt(use -> setting.minute(use.at().toLocalTime()))
        .summaryStatistics();
  }
}
