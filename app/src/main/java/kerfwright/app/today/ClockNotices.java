package kerfwright.app.today;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import kerfwright.app.feature.Notice;
import kerfwright.app.words.Say;

/** Says so when what was written last is dated in the future. */
public final class ClockNotices {
  /** Clocks of two machines may differ by this much. */
  public static final Duration MAY_DIFFER = Duration.ofMinutes(5);

  private final Supplier<Optional<Instant>> newest;
  private final Clock clock;

  public ClockNotices(Supplier<Optional<Instant>> newest, Clock clock) {
    this.newest = newest;
    this.clock = clock;
  }

  public List<Notice> of(Say say) {
    return newest
        .get()
        .filter(at -> at.isAfter(clock.instant().plus(MAY_DIFFER)))
        .map(
            at ->
                new Notice(
                    true,
                    say.at("today.clock-ahead", say.moment(at)),
                    "/records",
                    say.at("today.see-records")))
        .stream()
        .toList();
  }
}
