package kerfwright.catalogue.table;

import java.util.List;
import java.util.stream.Collectors;

/** Packaged data that may not be used; the message lists every fault. */
public final class BadDataException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<DataFault> faults;

  public BadDataException(List<DataFault> faults) {
    super(
        faults.size()
            + " fault(s) in the packaged data:\n"
            + faults.stream().map(DataFault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  public List<DataFault> faults() {
    return faults;
  }
}
