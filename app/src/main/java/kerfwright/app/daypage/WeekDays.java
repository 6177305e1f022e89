package kerfwright.app.daypage;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DrawerDay;
import kerfwright.practice.daylist.TypeName;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.horizon.RecordedDays;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.restock.PastUses;
import kerfwright.schedule.Day;
import kerfwright.schedule.InvalidDayException;

/**
 * The days a usual week is drawn from: those of the cut record where it holds enough of them, else
 * the day lists.
 *
 * @param days the days, with the present stock
 * @param fromRecord whether the record tells them
 * @param recorded days the record tells
 */
public record WeekDays(List<Day> days, boolean fromRecord, int recorded) {
  private static final int WEEKS = 13;
  private static final int MOST_DAYS = 60;

  static WeekDays of(DayService service, CutRecord record, Clock clock) {
    List<Day> recorded =
        problems(service, RecordedDays.of(uses(service, record, clock), service.setting()));
    if (recorded.size() >= RecordedDays.ENOUGH) {
      return new WeekDays(recorded, true, recorded.size());
    }
    List<List<Booking>> lists = new ArrayList<>();
    for (LocalDate date : service.books().before(service.today().plusDays(1), MOST_DAYS)) {
      lists.add(service.books().read(date).bookings());
    }
    return new WeekDays(problems(service, lists), false, recorded.size());
  }

  private static List<Day> problems(DayService service, List<List<Booking>> lists) {
    List<Day> days = new ArrayList<>();
    for (List<Booking> bookings : lists) {
      try {
        days.add(DrawerDay.of(bookings, service.drawer(), service.setting()).problem());
      } catch (InvalidDayException outsideTodaysHours) {
        // a day of other opening hours says nothing about a usual one
      }
    }
    days.removeIf(day -> day.demand() == 0);
    return days.size() > MOST_DAYS ? days.subList(days.size() - MOST_DAYS, days.size()) : days;
  }

  private static List<RecordedDays.Use> uses(DayService service, CutRecord record, Clock clock) {
    Instant from = service.today().minusWeeks(WEEKS).atStartOfDay(clock.getZone()).toInstant();
    Map<UUID, Optional<String>> types = new HashMap<>();
    List<RecordedDays.Use> uses = new ArrayList<>();
    for (RecordEntry entry : PastUses.entries(record, from)) {
      CutUse use = entry.use();
      types
          .computeIfAbsent(
              use.instrument().id(),
              id ->
                  service
                      .drawer()
                      .find(id)
                      .filter(StockItem::isRotary)
                      .map(item -> TypeName.of(item.properties())))
          .ifPresent(
              type ->
                  uses.add(
                      new RecordedDays.Use(
                          LocalDateTime.ofInstant(use.at(), clock.getZone()),
                          use.caseReference() + " " + use.tooth().fdi(),
                          type)));
    }
    return uses;
  }
}
