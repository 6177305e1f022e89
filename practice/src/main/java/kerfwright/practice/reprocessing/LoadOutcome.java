package kerfwright.practice.reprocessing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of a change of a load: all of it was written, or nothing.
 *
 * @param load as it is now, null where nothing was written
 * @param refusals why nothing was written
 */
public record LoadOutcome(@Nullable Load load, List<LoadRefusal> refusals) {
  public LoadOutcome {
    refusals = List.copyOf(refusals);
  }

  static LoadOutcome refused(LoadRefusal.Kind kind, String... arguments) {
    return new LoadOutcome(null, List.of(LoadRefusal.of(kind, arguments)));
  }
}
