package kerfwright.practice.reprocessing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import kerfwright.quantity.Identified;

/**
 * One load of a steriliser.
 *
 * @param id time-ordered, on its label
 * @param version grows by one with every change; a change that names an older one is refused
 * @param name steriliser, day and number of the day
 * @param steriliser name of the steriliser
 * @param cycle which cycle
 * @param started when it was started
 * @param minutes how long it takes with drying, min
 * @param state where it stands
 * @param pouches what is in it
 * @param events what was done to it, oldest first
 */
public record Load(
    UUID id,
    int version,
    String name,
    String steriliser,
    Cycle cycle,
    Instant started,
    int minutes,
    State state,
    List<Pouch> pouches,
    List<LoadEvent> events) {
  /** Where a load stands. It is released or failed by a person, and a released one may fail yet. */
  public enum State implements Identified {
    RUNNING,
    RELEASED,
    FAILED;
  }

  public Load {
    pouches = List.copyOf(pouches);
    events = List.copyOf(events);
  }

  /** When its cycle is over. */
  public Instant over() {
    return started.plus(Duration.ofMinutes(minutes));
  }

  /** The newest result of every indicator. */
  public Map<Indicator, Indicator.Result> readings() {
    Map<Indicator, Indicator.Result> results = new EnumMap<>(Indicator.class);
    for (Indicator indicator : Indicator.values()) {
      results.put(indicator, Indicator.Result.NOT_READ);
    }
    for (LoadEvent event : events) {
      if (event.indicator() != null && event.result() != null) {
        results.put(event.indicator(), event.result());
      }
    }
    return results;
  }

  /** Every instrument in it. */
  public Stream<Pouch.Content> contents() {
    return pouches.stream().flatMap(pouch -> pouch.contents().stream());
  }

  /** This load in another state, with one event more. */
  Load after(State next, LoadEvent event) {
    List<LoadEvent> all = new ArrayList<>(events);
    all.add(event);
    return new Load(id, version + 1, name, steriliser, cycle, started, minutes, next, pouches, all);
  }

  /** Several events in one change are one version. */
  Load atVersion(int changed) {
    return new Load(id, changed, name, steriliser, cycle, started, minutes, state, pouches, events);
  }
}
