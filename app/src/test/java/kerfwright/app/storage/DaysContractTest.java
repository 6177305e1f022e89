package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kerfwright.app.storage.cases.StoredDays;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.KeptRemedy;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Need;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;
import kerfwright.schedule.Substitute;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.remedy.Remedy;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every storage of day lists keeps to. */
abstract class DaysContractTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 4);
  private static final Need NEED = new Need("round", 0.25, List.of(new Substitute("flame", 1.5)));
  private static final Booking BOOKING =
      new Booking(
          "A1", "1", LocalTime.of(8, 0), LocalTime.of(8, 40), "K-1", "16", "", null, List.of(NEED));

  private Database database;
  private StoredDays days;

  /** A new, empty database. */
  abstract Database open() throws Exception;

  @BeforeEach
  void start() throws Exception {
    database = open();
    days = new StoredDays(database, Clock.systemUTC());
  }

  @AfterEach
  void stop() {
    if (database != null) {
      database.close();
    }
  }

  private static PlannedDay planned() {
    Day problem =
        new Day(
            LocalTime.of(8, 0),
            300,
            20,
            45,
            15,
            1,
            4,
            List.of(
                new Stock("round", 5, List.of(1, 2), Set.of(1)), new Stock("flame", 5, List.of())),
            List.of(Appointment.of("A1", 0, 40, "1", List.of(NEED))),
            new FixedFacts(
                10,
                List.of(new SteriliserLoad(0, List.of(new InstrumentRef("round", 1)))),
                List.of(TrayPlace.of("A1", "round", 0))),
            List.of(50));
    DayPlan plan =
        new DayPlan(
            problem.facts().trays(),
            problem.facts().loads(),
            List.of(new Shortage("A1", "flame")),
            List.of(new GoalResult(Goal.SHORTAGES, 1, 0, false, 0.5)),
            "test");
    List<KeptRemedy> remedies = new ArrayList<>();
    for (Remedy one :
        List.of(
            new Remedy.UseSubstitute("A1", "round", "flame", 1.5),
            new Remedy.SwapAppointments("A1", "A2"),
            new Remedy.LoadBetween(50),
            new Remedy.LoadBeforeOpening(List.of(new InstrumentRef("round", 1))),
            new Remedy.LoadBeside(),
            new Remedy.BuyMore("round", 2))) {
      remedies.add(new KeptRemedy(one, 10, 0, 2, true));
    }
    return new PlannedDay(
        problem, Map.of("round", List.of("R1", "R2"), "flame", List.of()), plan, remedies);
  }

  @Test
  void aDayComesBackAsItWasWritten() {
    DayBook book = DayBook.empty(DAY).with(List.of(BOOKING), planned());
    assertTrue(days.write(book, "planned"));
    assertEquals(new DayBook(DAY, 1, List.of(BOOKING), planned()), days.read(DAY));
    assertEquals(DayBook.empty(DAY.plusDays(1)), days.read(DAY.plusDays(1)));
  }

  @Test
  void earlierVersionsStayAndAnOldOneIsNotWrittenOver() {
    assertTrue(days.write(DayBook.empty(DAY).with(List.of(BOOKING), null), "added"));
    DayBook first = days.read(DAY);
    assertTrue(days.write(first.with(List.of(), null), "removed"));
    assertFalse(days.write(first.with(List.of(), planned()), "planned"), "version 1 is old");
    assertEquals(2, days.read(DAY).version());
    assertEquals(first, days.read(DAY, 1));
  }

  @Test
  void ofManyWritersOfOneVersionOneIsLetIn() throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      List<Future<Boolean>> writes = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        writes.add(
            pool.submit(
                () -> days.write(DayBook.empty(DAY).with(List.of(BOOKING), null), "added")));
      }
      int letIn = 0;
      for (Future<Boolean> one : writes) {
        letIn += one.get() ? 1 : 0;
      }
      assertEquals(1, letIn);
    } finally {
      pool.shutdownNow();
    }
  }

  @Test
  void daysBeforeAreThoseThatStillHaveAppointments() {
    for (int i = 0; i < 4; i++) {
      LocalDate day = DAY.plusDays(i);
      days.write(DayBook.empty(day).with(List.of(BOOKING), null), "added");
    }
    days.write(days.read(DAY.plusDays(1)).with(List.of(), null), "removed");
    assertEquals(List.of(DAY.plusDays(2), DAY), days.before(DAY.plusDays(3), 10));
    assertEquals(List.of(DAY.plusDays(2)), days.before(DAY.plusDays(3), 1));
  }

  @Test
  void traysAreKeptByNameAndForgottenWhenEmptied() {
    days.keep(new TrayTemplate("crown", 60, List.of(NEED)));
    days.keep(new TrayTemplate("bevel", 30, List.of(NEED)));
    days.keep(new TrayTemplate("crown", 45, List.of(NEED)));
    assertEquals(
        List.of(
            new TrayTemplate("bevel", 30, List.of(NEED)),
            new TrayTemplate("crown", 45, List.of(NEED))),
        days.trays());
    days.keep(new TrayTemplate("crown", 45, List.of()));
    assertEquals(1, days.trays().size());
  }
}
