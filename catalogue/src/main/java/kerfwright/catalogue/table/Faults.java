package kerfwright.catalogue.table;

import java.util.ArrayList;
import java.util.List;
import kerfwright.quantity.Message;

/** Gathers the faults of the tables, so that all are told at once. */
public final class Faults {
  private final List<DataFault> found = new ArrayList<>();

  /** One that only a packaged table can have, in plain words for whoever writes it. */
  public void add(String file, long line, String column, String expected) {
    add(file, line, column, Message.of("fault.plain", expected));
  }

  public void add(String file, long line, String column, Message expected) {
    found.add(new DataFault(file, line, column, expected));
  }

  public List<DataFault> found() {
    return found.stream().distinct().toList();
  }

  /** Throws with every fault gathered so far, if there is one. */
  public void throwIfAny() {
    if (!found.isEmpty()) {
      throw new BadDataException(found());
    }
  }
}
