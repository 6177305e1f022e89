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
    Walk walk = new Walk(record, progress);
    record.walk(walk::goesOn);
    if (walk.broken == null && !walk.sound.equals(walk.end)) {
      walk.breaks(Kind.END);
    }
    return new ChainCheck(walk.sound, walk.broken);
  }

  private static final class Walk {
    private final CutRecord record;
    private final LongConsumer progress;
    private final Chain end;
    private Chain sound = Chain.EMPTY;
    private @Nullable Break broken;

    Walk(CutRecord record, LongConsumer progress) {
      this.progress = progress;
      this.record = record;
      this.end = record.end();
    }

    boolean goesOn(CutRecord.Stored stored) {
      if (sound.number() == end.number() || end.number() < 0) {
        if (record.end().number() == end.number()) {
          breaks(Kind.END);
        }
        return false;
      }
      if (stored.number() != sound.number() + 1) {
        breaks(Kind.MISSING);
      } else if (!Chain.hash(sound.hash(), stored.text()).equals(stored.hash())) {
        breaks(Kind.CHANGED);
      } else if (!stored.found()) {
        breaks(Kind.FOUND_WRONGLY);
      } else {
        sound = new Chain(stored.number(), stored.hash());
        if (sound.number() % TOLD_EVERY == 0) {
          progress.accept(sound.number());
        }
      }
      return broken == null;
    }

    void breaks(Kind kind) {
      broken = new Break(sound.number() + 1, kind);
    }
  }
}
