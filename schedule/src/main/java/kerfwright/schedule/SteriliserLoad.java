package kerfwright.schedule;

import java.util.List;

/**
 * One steriliser load.
 *
 * @param startMin start, minutes from the start of the day; below 0 where it ran before opening
 * @param instruments what goes in
 */
public record SteriliserLoad(int startMin, List<InstrumentRef> instruments) {
  public SteriliserLoad {
    instruments = List.copyOf(instruments);
  }
}
