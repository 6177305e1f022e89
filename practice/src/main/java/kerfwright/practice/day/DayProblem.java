package kerfwright.practice.day;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A day to be planned. Instruments are clean at the start unless said otherwise. One used by an
 * appointment is dirty at its end, may go into a load that starts a cleaning time later, and is
 * clean again at that load's end. Reprocessing after closing is free and is not planned.
 *
 * @param start clock time of minute 0
 * @param lengthMin opening time
 * @param cleaningMin from the end of the appointment until the instrument may go into a load
 * @param loadMin a load from start to release
 * @param loadGridMin loads start at multiples of this
 * @param sterilisers how many loads may run at once
 * @param loadCapacity instruments a load
 * @param stock the instruments, by type
 * @param appointments the day list
 * @param facts what is fixed already
 * @param extraStartsMin minutes off the grid at which a load may start as well
 */
public record DayProblem(
    LocalTime start,
    int lengthMin,
    int cleaningMin,
    int loadMin,
    int loadGridMin,
    int sterilisers,
    int loadCapacity,
    List<Stock> stock,
    List<Appointment> appointments,
    FixedFacts facts,
    List<Integer> extraStartsMin) {

  /** Longest day that can be stated. */
  public static final int LONGEST_DAY_MIN = 24 * 60;

  /**
   * @throws InvalidDayException with every fault of the day
   */
  public DayProblem {
    stock = List.copyOf(stock);
    appointments = List.copyOf(appointments);
    extraStartsMin = List.copyOf(extraStartsMin);
    List<DayFault> faults = new ArrayList<>();
    positive(faults, "length_min", lengthMin);
    if (lengthMin > LONGEST_DAY_MIN) {
      faults.add(new DayFault("length_min", "is " + lengthMin, "at most " + LONGEST_DAY_MIN));
    }
    if (cleaningMin < 0) {
      faults.add(new DayFault("cleaning_min", "is " + cleaningMin, "zero or more minutes"));
    }
    positive(faults, "load_min", loadMin);
    positive(faults, "load_grid_min", loadGridMin);
    positive(faults, "sterilisers", sterilisers);
    positive(faults, "load_capacity", loadCapacity);
    for (int at : extraStartsMin) {
      if (at < 0 || at > lengthMin - loadMin) {
        faults.add(
            new DayFault("extra_starts", "holds minute " + at, "a load that ends by closing"));
      }
    }
    StockCheck.check(stock, faults);
    AppointmentCheck.check(appointments, stock, lengthMin, faults);
    if (faults.isEmpty()) {
      FactsCheck.check(
          facts, stock, appointments, cleaningMin, loadMin, sterilisers, loadCapacity, faults);
    }
    if (!faults.isEmpty()) {
      throw new InvalidDayException(faults);
    }
  }

  private static void positive(List<DayFault> faults, String field, int value) {
    if (value <= 0) {
      faults.add(new DayFault(field, "is " + value, "a whole number above zero"));
    }
  }

  /** A day whose loads start on the grid alone. */
  public DayProblem(
      LocalTime start,
      int lengthMin,
      int cleaningMin,
      int loadMin,
      int loadGridMin,
      int sterilisers,
      int loadCapacity,
      List<Stock> stock,
      List<Appointment> appointments,
      FixedFacts facts) {
    this(
        start,
        lengthMin,
        cleaningMin,
        loadMin,
        loadGridMin,
        sterilisers,
        loadCapacity,
        stock,
        appointments,
        facts,
        List.of());
  }

  /** Whether a load that is not fixed may start at this minute. */
  public boolean mayStartAt(int minute) {
    return minute >= Math.max(0, facts.nowMin())
        && minute <= lengthMin - loadMin
        && (minute % loadGridMin == 0 || extraStartsMin.contains(minute));
  }

  /** Needs of the whole day, one for each type on each tray. */
  public int demand() {
    return appointments.stream().mapToInt(a -> a.needs().size()).sum();
  }

  /** The clock time of a minute of this day. */
  public LocalTime clock(int minute) {
    return start.plusMinutes(minute);
  }

  public DayProblem withAppointments(List<Appointment> others) {
    return with(stock, others, facts, sterilisers, extraStartsMin);
  }

  public DayProblem withFacts(FixedFacts others) {
    return with(stock, appointments, others, sterilisers, extraStartsMin);
  }

  public DayProblem withStock(List<Stock> others) {
    return with(others, appointments, facts, sterilisers, extraStartsMin);
  }

  public DayProblem withSterilisers(int others) {
    return with(stock, appointments, facts, others, extraStartsMin);
  }

  /** The same day in which a load may also start at this minute. */
  public DayProblem withStartAt(int minute) {
    List<Integer> more = new ArrayList<>(extraStartsMin);
    more.add(minute);
    return with(stock, appointments, facts, sterilisers, more);
  }

  private DayProblem with(
      List<Stock> otherStock,
      List<Appointment> otherAppointments,
      FixedFacts otherFacts,
      int otherSterilisers,
      List<Integer> otherStarts) {
    return new DayProblem(
        start,
        lengthMin,
        cleaningMin,
        loadMin,
        loadGridMin,
        otherSterilisers,
        loadCapacity,
        otherStock,
        otherAppointments,
        otherFacts,
        otherStarts);
  }

  /** Where the appointment with this id stands on the list. */
  public Optional<Appointment> appointment(String id) {
    return appointments.stream().filter(a -> a.id().equals(id)).findFirst();
  }
}
