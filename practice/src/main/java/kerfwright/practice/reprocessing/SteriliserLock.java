package kerfwright.practice.reprocessing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import org.jspecify.annotations.Nullable;

/**
 * A steriliser out of service since a spore test failed. It returns when repeat tests have passed
 * and a person who may release says so: one test where a single one failed, three in a row where
 * another failed since (figures monitor-3 and monitor-4 of {@code catalogue/reprocessing}). Reading
 * a failed test again does not undo it.
 *
 * @param failed loads whose spore test failed and that nobody has answered for, newest first
 * @param passed tests passed since
 * @param needed tests that must pass
 */
public record SteriliserLock(List<Load> failed, int passed, int needed) {
  private static final Instant NEVER = Instant.parse("9999-01-01T00:00:00Z");

  public SteriliserLock {
    failed = List.copyOf(failed);
  }

  /** The newest load whose test failed. */
  public Load load() {
    return failed.get(0);
  }

  /** True when it may return to service. */
  public boolean mayReturn() {
    return passed >= needed;
  }

  /** The lock of a steriliser; empty where it is in service. */
  public static Optional<SteriliserLock> of(Loads loads, String steriliser) {
    List<Load> open = new ArrayList<>();
    Instant last = Instant.EPOCH;
    for (Load load : loads.withFailedSpores(steriliser)) {
      Instant at = failedAt(load);
      if (at != null) {
        open.add(load);
        last = at.isAfter(last) ? at : last;
      }
    }
    if (open.isEmpty()) {
      return Optional.empty();
    }
    int passed = 0;
    for (Load test : loads.of(steriliser, last, NEVER)) {
      passed += passed(test) ? 1 : 0;
    }
    return Optional.of(new SteriliserLock(open, passed, needed(open.size())));
  }

  private static int needed(int failed) {
    String figure = failed == 1 ? "monitor-3" : "monitor-4";
    Double tests = ReprocessingFigures.packaged().find(figure).orElseThrow().numbers().typical();
    return (int) Math.round(Objects.requireNonNull(tests));
  }

  /** When its spore test was last read as failed; null where that was answered for since. */
  private static @Nullable Instant failedAt(Load load) {
    Instant at = null;
    for (LoadEvent event : load.events()) {
      if (event.indicator() == Indicator.SPORES && event.result() == Indicator.Result.FAILED) {
        at = event.at();
      } else if (event.what() == LoadEvent.What.RETURNED) {
        at = null;
      }
    }
    return at;
  }

  private static boolean passed(Load load) {
    return load.readings().values().stream().allMatch(one -> one == Indicator.Result.PASSED)
        && failedAt(load) == null;
  }
}
