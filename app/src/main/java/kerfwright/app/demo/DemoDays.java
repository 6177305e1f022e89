package kerfwright.app.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.schedule.Need;
import kerfwright.schedule.Substitute;
import org.jspecify.annotations.Nullable;

/** Day lists of the invented practice: today's, and those of the two weeks before. */
public final class DemoDays {
  private static final String LONG = "carbide-6-blade-cylinder-round-end-012-long";
  private static final String ROUND = "diamond-coarse-round-018";
  private static final String TAPER = "diamond-coarse-taper-round-end-018";
  private static final String FLAME = "diamond-fine-flame-014";
  private static final Need LONG_ONE =
      new Need(LONG, 0.2, List.of(new Substitute("carbide-6-blade-cylinder-round-end-014", 1.25)));

  private static final TrayTemplate DEEP =
      new TrayTemplate("deep cavity", 40, List.of(LONG_ONE, need(ROUND, 0.1)));
  private static final TrayTemplate OFF =
      new TrayTemplate("crown off", 45, List.of(LONG_ONE, need(TAPER, 0.3)));
  private static final TrayTemplate CAVITY =
      new TrayTemplate("cavity", 30, List.of(need(ROUND, 0.1), need(FLAME, 0.05)));
  private static final TrayTemplate VENEER =
      new TrayTemplate("veneer", 60, List.of(need(TAPER, 0.2), need(FLAME, 0.1)));

  private static final int DAYS_BEFORE = 14;
  private static final int[] LATER_MIN = {0, 10, 5, 15, 20};

  private DemoDays() {}

  private static Need need(String type, double life) {
    return new Need(type, life, List.of());
  }

  /** Keeps trays and day lists, unless today has a list already. */
  public static void keep(DayBooks books, LocalDate today) throws BadInput {
    if (books.read(today).version() > 0) {
      return;
    }
    for (TrayTemplate tray : List.of(DEEP, OFF, CAVITY, VENEER)) {
      books.keep(tray);
    }
    write(books, today, today(today));
    for (int back = 1; back <= DAYS_BEFORE; back++) {
      LocalDate day = today.minusDays(back);
      if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
        write(books, day, earlier(back));
      }
    }
  }

  private static void write(DayBooks books, LocalDate day, List<Booking> bookings) {
    if (books.read(day).version() == 0
        && !books.write(DayBook.empty(day).with(bookings, null), "demo")) {
      throw new IllegalStateException("Another process is filling this practice; start again");
    }
  }

  private static List<Booking> today(LocalDate day) throws BadInput {
    List<Booking> all = new ArrayList<>();
    add(all, "1", "08:00", 30, "K-0501", "46", DEEP);
    add(all, "2", "08:00", 40, "K-0502", "36", OFF);
    add(all, "1", "08:45", 45, "K-0503", "26", OFF);
    add(all, "2", "08:55", 30, "K-0504", "14", CAVITY);
    add(all, "1", "09:40", 40, "K-0505", "17", DEEP);
    add(all, "2", "09:35", 60, "K-0506", "21", VENEER);
    add(all, "1", "10:30", 30, "K-0507", "25", CAVITY);
    add(all, "2", "10:45", 30, "K-0508", "35", CAVITY);
    planned(all, "1", "11:10", 50, "K-0412", "16", "access-metal-ceramic");
    planned(all, "2", "11:25", 45, "K-0423", "11", "bevel-incisor");
    add(all, "1", "13:00", 45, "K-0509", "47", OFF);
    add(all, "2", "13:10", 40, "K-0510", "37", DEEP);
    add(all, "1", "14:00", 60, "K-0511", "12", VENEER);
    add(all, "2", "14:05", 30, "K-0512", "45", CAVITY);
    add(all, "1", "15:10", 30, "K-0513", "15", CAVITY);
    add(all, "2", "14:50", 60, "K-0514", "22", VENEER);
    return all;
  }

  /** A day of the weeks before: fewer or other trays, a little later. */
  private static List<Booking> earlier(int back) {
    int later = LATER_MIN[back % LATER_MIN.length];
    List<TrayTemplate> trays = List.of(DEEP, CAVITY, OFF, VENEER, DEEP, CAVITY, OFF);
    List<Booking> all = new ArrayList<>();
    for (int chair = 1; chair <= 2; chair++) {
      LocalTime at = LocalTime.of(8, 0).plusMinutes(chair == 1 ? 0 : later);
      for (int n = 0; n < 6; n++) {
        TrayTemplate tray = trays.get((n * (1 + back % 3) + chair + back) % trays.size());
        String reference = "K-0" + (300 + back * 12 + n * 2 + chair);
        add(all, Integer.toString(chair), at.toString(), tray.minutes(), reference, "", tray);
        at = at.plusMinutes(tray.minutes() + (n == 3 ? 60 : 15));
      }
    }
    return all;
  }

  private static void add(
      List<Booking> all,
      String chair,
      String start,
      int minutes,
      String reference,
      String tooth,
      TrayTemplate tray) {
    all.add(booking(all, chair, start, minutes, reference, tooth, tray.name(), null, tray.needs()));
  }

  private static void planned(
      List<Booking> all,
      String chair,
      String start,
      int minutes,
      String reference,
      String tooth,
      String demoCase)
      throws BadInput {
    String text = DemoPractice.caseText(demoCase);
    all.add(booking(all, chair, start, minutes, reference, tooth, "", text, List.of()));
  }

  private static Booking booking(
      List<Booking> all,
      String chair,
      String start,
      int minutes,
      String reference,
      String tooth,
      String work,
      @Nullable String text,
      List<Need> needs) {
    LocalTime at = LocalTime.parse(start);
    return new Booking(
        "A" + (all.size() + 1),
        chair,
        at,
        at.plusMinutes(minutes),
        reference,
        tooth,
        work,
        text,
        needs);
  }
}
