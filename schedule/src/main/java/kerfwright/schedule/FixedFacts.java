package kerfwright.schedule;

import java.util.List;
import java.util.stream.Stream;

/**
 * What can no longer be changed: loads already running or done, instruments already on a tray, and
 * how far the day has gone. A plan keeps all of it.
 *
 * @param nowMin no new load starts before this minute
 * @param loads loads that have started
 * @param trays instruments that lie on a tray or have been used
 */
public record FixedFacts(int nowMin, List<SteriliserLoad> loads, List<TrayPlace> trays) {
  /** A day that has not begun. */
  public static final FixedFacts NONE = new FixedFacts(0, List.of(), List.of());

  public FixedFacts {
    loads = List.copyOf(loads);
    trays = List.copyOf(trays);
  }

  /** These and more, each once. */
  public FixedFacts and(FixedFacts more) {
    return new FixedFacts(
        Math.max(nowMin, more.nowMin),
        Stream.concat(loads.stream(), more.loads.stream()).distinct().toList(),
        Stream.concat(trays.stream(), more.trays.stream()).distinct().toList());
  }
}
