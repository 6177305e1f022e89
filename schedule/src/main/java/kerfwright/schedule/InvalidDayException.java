package kerfwright.schedule;

import java.util.List;
import java.util.stream.Collectors;

/** A day that cannot be planned as stated, with every fault found. */
public final class InvalidDayException extends IllegalArgumentException {
  private final transient List<DayFault> faults;

  InvalidDayException(List<DayFault> faults) {
    super(
        faults.stream()
            .map(DayFault::toString)
            .collect(Collectors.joining(System.lineSeparator())));
    this.faults = List.copyOf(faults);
  }

  public List<DayFault> faults() {
    return faults;
  }
}
