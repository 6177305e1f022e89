package kerfwright.catalogue.number;

import java.util.List;
import java.util.stream.Collectors;
import kerfwright.catalogue.instrument.InstrumentProperties;
import org.jspecify.annotations.Nullable;

/**
 * What became of a row: the instrument, or every fault that stood in the way.
 *
 * @param properties the instrument, or null where there are faults
 * @param faults all faults; empty where the instrument stands
 */
public record Resolution(@Nullable InstrumentProperties properties, List<FieldFault> faults) {
  public Resolution {
    faults = List.copyOf(faults);
    if ((properties == null) == faults.isEmpty()) {
      throw new IllegalArgumentException("A resolution has either an instrument or faults");
    }
  }

  public boolean resolved() {
    return properties != null;
  }

  /** The instrument; where there is none, throws with all faults. */
  public InstrumentProperties orThrow() {
    if (properties == null) {
      throw new IllegalArgumentException(
          faults.stream().map(FieldFault::toString).collect(Collectors.joining("\n")));
    }
    return properties;
  }
}
