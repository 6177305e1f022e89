package kerfwright.schedule;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
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
public record Day(
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
  public Day(
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
    this.start = start;
    this.lengthMin = lengthMin;
    this.cleaningMin = cleaningMin;
    this.loadMin = loadMin;
    this.loadGridMin = loadGridMin;
    this.sterilisers = sterilisers;
    this.loadCapacity = loadCapacity;
    this.stock = List.copyOf(stock);
    this.appointments = List.copyOf(appointments);
    this.facts = facts;
    this.extraStartsMin = List.copyOf(extraStartsMin);
    List<DayFault> faults = DayCheck.faults(this);
    if (!faults.isEmpty()) {
      throw new InvalidDayException(faults);
    }
  }

  /** A day whose loads start on the grid alone. */
  public Day(
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

  /** How many of these loads run at a minute. */
  public int running(List<SteriliserLoad> loads, int minute) {
    return (int)
        loads.stream()
            .filter(l -> l.startMin() <= minute && minute < l.startMin() + loadMin)
            .count();
  }

  /** Needs of the whole day, one for each type on each tray. */
  public int demand() {
    return appointments.stream().mapToInt(a -> a.needs().size()).sum();
  }

  /** The appointments by start. */
  public List<Appointment> inOrder() {
    return appointments.stream().sorted(Comparator.comparingInt(Appointment::startMin)).toList();
  }

  /** The clock time of a minute of this day. */
  public LocalTime clock(int minute) {
    return start.plusMinutes(minute);
  }

  public Day withAppointments(List<Appointment> others) {
    return with(stock, others, facts, sterilisers, extraStartsMin);
  }

  public Day withFacts(FixedFacts others) {
    return with(stock, appointments, others, sterilisers, extraStartsMin);
  }

  public Day withStock(List<Stock> others) {
    return with(others, appointments, facts, sterilisers, extraStartsMin);
  }

  public Day withSterilisers(int others) {
    return with(stock, appointments, facts, others, extraStartsMin);
  }

  /** The same day in which a load may also start at this minute. */
  public Day withStartAt(int minute) {
    List<Integer> more = new ArrayList<>(extraStartsMin);
    more.add(minute);
    return with(stock, appointments, facts, sterilisers, more);
  }

  private Day with(
      List<Stock> otherStock,
      List<Appointment> otherAppointments,
      FixedFacts otherFacts,
      int otherSterilisers,
      List<Integer> otherStarts) {
    return new Day(
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

  /** The appointment with this id. */
  public Optional<Appointment> appointment(String id) {
    return appointments.stream().filter(a -> a.id().equals(id)).findFirst();
  }
}
