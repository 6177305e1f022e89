package kerfwright.practice.day;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

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
    FixedFacts facts) {

  /** Longest day that can be stated. */
  public static final int LONGEST_DAY_MIN = 24 * 60;

  /**
   * @throws InvalidDayException with every fault of the day
   */
  public DayProblem {
    stock = List.copyOf(stock);
    appointments = List.copyOf(appointments);
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

  /** Needs of the whole day, one for each type on each tray. */
  public int demand() {
    return appointments.stream().mapToInt(a -> a.needs().size()).sum();
  }

  /** The clock time of a minute of this day. */
  public LocalTime clock(int minute) {
    return start.plusMinutes(minute);
  }

  public DayProblem withAppointments(List<Appointment> others) {
    return new DayProblem(
        start,
        lengthMin,
        cleaningMin,
        loadMin,
        loadGridMin,
        sterilisers,
        loadCapacity,
        stock,
        others,
        facts);
  }

  public DayProblem withFacts(FixedFacts others) {
    return new DayProblem(
        start,
        lengthMin,
        cleaningMin,
        loadMin,
        loadGridMin,
        sterilisers,
        loadCapacity,
        stock,
        appointments,
        others);
  }
}
