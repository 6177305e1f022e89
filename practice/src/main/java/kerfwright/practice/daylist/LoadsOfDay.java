package kerfwright.practice.daylist;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.reprocessing.Pouch;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.SteriliserLoad;

/** The loads really started on a day, in the words of its plan. */
public final class LoadsOfDay {
  private static final int NEWEST = 60;

  private LoadsOfDay() {}

  /**
   * Loads of that date that were not failed, by start. One holds those of the day's pieces that
   * went in; it may hold none and still takes up a steriliser.
   *
   * @param pieces labels of the day's pieces by type
   */
  public static List<SteriliserLoad> of(
      Loads loads,
      LocalDate date,
      ZoneId zone,
      DaySetting setting,
      Map<String, List<String>> pieces) {
    Map<String, List<InstrumentRef>> byItem = byItem(pieces);
    List<SteriliserLoad> real = new ArrayList<>();
    for (Load load : loads.newest(NEWEST)) {
      ZonedDateTime started = load.started().atZone(zone);
      int minute = setting.minute(started.toLocalTime());
      if (started.toLocalDate().equals(date)
          && load.state() != Load.State.FAILED
          && minute < setting.lengthMin()) {
        Set<String> inside = load.contents().map(Pouch.Content::label).collect(Collectors.toSet());
        List<InstrumentRef> refs =
            inside.stream().flatMap(l -> byItem.getOrDefault(l, List.of()).stream()).toList();
        real.add(new SteriliserLoad(minute, refs.stream().sorted().toList()));
      }
    }
    real.sort(Comparator.comparingInt(SteriliserLoad::startMin));
    return real;
  }

  private static Map<String, List<InstrumentRef>> byItem(Map<String, List<String>> pieces) {
    Map<String, List<InstrumentRef>> byItem = new LinkedHashMap<>();
    pieces.forEach(
        (type, labels) -> {
          for (int i = 0; i < labels.size(); i++) {
            byItem
                .computeIfAbsent(PlannedDay.itemLabel(labels.get(i)), any -> new ArrayList<>())
                .add(new InstrumentRef(type, i));
          }
        });
    return byItem;
  }
}
