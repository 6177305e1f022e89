package kerfwright.practice.record;

import java.util.function.LongConsumer;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What a look at the whole chain found.
 *
 * @param sound the chain up to the break, or all of it
 * @param broken where it breaks, or null
 */
public record ChainCheck(Chain sound, @Nullable Break broken) {
  private static final int TOLD_EVERY = 1000;

  /** In what way a chain breaks. */
  public enum Kind implements Identified {
    /** An entry is missing here. */
    MISSING,
    /** The text of this entry, or its hash, was changed. */
    CHANGED,
    /** The columns this entry is found by do not say what its text says. */
    FOUND_WRONGLY,
    /** Entries at the end are missing, or were added past the program. */
    END
  }

  /**
   * A break.
   *
   * @param number the place of the first entry that does not hold
   * @param kind in what way
   */
  public record Break(long number, Kind kind) {}

  public boolean holds() {
    return broken == null;
  }

  /** Looks at every entry there is; what is written meanwhile is left out. */
  public static ChainCheck of(CutRecord record) {
    return of(record, looked -> {});
  }

  /** Looks at every entry there is, and tells now and then how many it has looked at. */
  public static ChainCheck of(CutRecord record, LongConsumer progress) {
    Chain end = record.end();
    Walk walk = new Walk();
    record.walk(
        stored -> {
          if (walk.sound.number() == end.number() || end.number() < 0) {
            // one more than there should be, unless it was written meanwhile
            if (record.end().number() == end.number()) {
              walk.breaks(Kind.END);
            }
            return false;
          }
          if (stored.number() % TOLD_EVERY == 0) {
            progress.accept(stored.number());
          }
          return walk.at(stored);
        });
    return walk.upTo(end);
  }

  /** Goes along a chain, to the first link that is not as it was written. */
  public static final class Walk {
    private Chain sound = Chain.EMPTY;
    private @Nullable Break broken;

    /** Looks at the next link; false once the chain is broken. */
    public boolean at(CutRecord.Stored link) {
      if (broken != null) {
        return false;
      }
      Chain next = sound.after(link.text());
      if (link.number() != next.number()) {
        breaks(Kind.MISSING);
      } else if (!next.hash().equals(link.hash())) {
        breaks(Kind.CHANGED);
      } else if (!link.found()) {
        breaks(Kind.FOUND_WRONGLY);
      } else {
        sound = next;
      }
      return broken == null;
    }

    private void breaks(Kind kind) {
      broken = new Break(sound.number() + 1, kind);
    }

    /** What was found, where that is the end of the chain as it is noted beside it. */
    public ChainCheck upTo(Chain end) {
      if (broken == null && !sound.equals(end)) {
        breaks(Kind.END);
      }
      return new ChainCheck(sound, broken);
    }
  }
}
