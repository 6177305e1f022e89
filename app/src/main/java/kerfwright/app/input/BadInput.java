package kerfwright.app.input;

import java.util.List;

/** What was handed in cannot be used; carries every fault found, never only the first. */
public final class BadInput extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  public BadInput(List<Fault> faults) {
    super(faults.isEmpty() ? "no fault named" : faults.get(0).oneLine());
    this.faults = List.copyOf(faults);
  }

  public BadInput(String origin, String problem) {
    this(List.of(new Fault(origin, 0, "", problem, null)));
  }

  public List<Fault> faults() {
    return faults;
  }
}
