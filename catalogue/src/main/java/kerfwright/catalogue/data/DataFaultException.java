package kerfwright.catalogue.data;

import java.util.List;
import java.util.stream.Collectors;

/** The packaged data are faulty; carries every fault found, not just the first. */
public final class DataFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<DataFault> faults;

  public DataFaultException(List<DataFault> faults) {
    super(
        "The catalogue's data have "
            + faults.size()
            + " fault(s):\n"
            + faults.stream().map(DataFault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  public List<DataFault> faults() {
    return faults;
  }
}
