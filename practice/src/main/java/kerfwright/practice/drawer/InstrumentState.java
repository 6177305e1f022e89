package kerfwright.practice.drawer;

import java.util.EnumSet;
import java.util.Set;
import kerfwright.quantity.Identified;

/**
 * Where an instrument is in its round. The moves follow common practice of reprocessing: nothing
 * used becomes clean but through cleaning and a released load.
 */
public enum InstrumentState implements Identified {
  CLEAN,
  ON_TRAY,
  USED,
  CLEANING,
  IN_LOAD,
  QUARANTINE,
  WITHDRAWN;

  private static final Set<InstrumentState> REPROCESSING = EnumSet.of(CLEANING, IN_LOAD);

  /** True where it may be used on a patient. */
  public boolean ready() {
    return this == CLEAN || this == ON_TRAY;
  }

  /**
   * The states someone may move it to by hand: into a load and clean out of it only the load itself
   * moves it.
   */
  public Set<InstrumentState> byHand(boolean singleUse) {
    Set<InstrumentState> next = next(singleUse);
    next.remove(IN_LOAD);
    if (this == IN_LOAD) {
      next.remove(CLEAN);
    }
    return next;
  }

  /** The states an instrument may go to from here; a single-use one is never reprocessed. */
  public Set<InstrumentState> next(boolean singleUse) {
    Set<InstrumentState> next = EnumSet.noneOf(InstrumentState.class);
    next.addAll(moves());
    if (singleUse) {
      next.removeAll(REPROCESSING);
      if (REPROCESSING.contains(this)) {
        // it should never have come here: only out
        next.retainAll(EnumSet.of(QUARANTINE, WITHDRAWN));
      }
    }
    return next;
  }

  private Set<InstrumentState> moves() {
    return switch (this) {
      case CLEAN -> EnumSet.of(ON_TRAY, USED, CLEANING, QUARANTINE, WITHDRAWN);
      case ON_TRAY -> EnumSet.of(CLEAN, USED, CLEANING, QUARANTINE, WITHDRAWN);
      case USED -> EnumSet.of(CLEANING, QUARANTINE, WITHDRAWN);
      case CLEANING -> EnumSet.of(USED, IN_LOAD, QUARANTINE, WITHDRAWN);
      case IN_LOAD -> EnumSet.of(CLEAN, CLEANING, QUARANTINE, WITHDRAWN);
      case QUARANTINE -> EnumSet.of(CLEANING, WITHDRAWN);
      case WITHDRAWN -> EnumSet.noneOf(InstrumentState.class);
    };
  }
}
