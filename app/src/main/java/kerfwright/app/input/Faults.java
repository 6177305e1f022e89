package kerfwright.app.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kerfwright.planner.casework.Contradiction.Fix;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Collects the faults of one file while it is read to its end. */
public final class Faults {
  private final String origin;
  private final List<Fault> found = new ArrayList<>();

  public Faults(String origin) {
    this.origin = origin;
  }

  public void add(int line, String field, Message message) {
    add(line, field, message, null);
  }

  public void add(int line, String field, Message message, @Nullable String nearest) {
    found.add(new Fault(origin, line, field, message, nearest));
  }

  public void addFixable(int line, String field, Message message, Fix fix) {
    found.add(new Fault(origin, line, field, message, null, fix));
  }

  /** True where more than will be told were found: nearest names are no longer looked for. */
  boolean enough() {
    return found.size() > BadInput.MOST;
  }

  /** Throws when anything was found, in the order of the lines. */
  public void throwIfAny() throws BadInput {
    if (!found.isEmpty()) {
      throw failure();
    }
  }

  public BadInput failure() {
    List<Fault> ordered = new ArrayList<>(found);
    ordered.sort(Comparator.comparingInt(Fault::line));
    return new BadInput(ordered);
  }
}
