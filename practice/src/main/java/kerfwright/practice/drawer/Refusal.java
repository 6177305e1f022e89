package kerfwright.practice.drawer;

import java.util.Set;

/** Why the rules of the drawer do not allow a change. */
public sealed interface Refusal {
  /** Those that need no value. */
  enum Plain implements Refusal {
    /** Another instrument has this label. */
    LABEL_TAKEN,
    /** Someone changed it after it was shown. */
    CHANGED_MEANWHILE,
    /** It was changed again after what is to be taken back. */
    CHANGED_SINCE,
    /** It is no longer in the drawer. */
    GONE,
    /** There is no such change. */
    CHANGE_UNKNOWN,
    /** The change is about no instrument. */
    NOTHING_PICKED,
    /** For single use and used: nothing makes it ready again. */
    USED_UP,
    /** For single use and used: this cannot be struck out. */
    STAYS_SINGLE_USE,
    /** It lies in a load and becomes clean with its release. */
    LOAD_RELEASES,
    /** Only making a load puts it into one. */
    LOAD_TAKES,
    /** The cut record changed it and is corrected there. */
    BY_RECORD,
    /** Its load moved it and decides. */
    BY_LOAD,
    /** It was marked used: only cleaning and a released load make it clean. */
    NEEDS_REPROCESSING
  }

  /**
   * A move no rule allows.
   *
   * @param from where it is
   * @param to where it was to go
   * @param singleUse true where it may not go there because it is for single use
   * @param possible where it may go
   */
  record NoWay(
      InstrumentState from, InstrumentState to, boolean singleUse, Set<InstrumentState> possible)
      implements Refusal {}

  /**
   * It lies on another tray of the day already, and its use is not written down.
   *
   * @param appointment whose tray
   */
  record OnOtherTray(String appointment) implements Refusal {}

  /**
   * A number of pieces that cannot be taken out of a lot.
   *
   * @param held pieces of the lot; from 1 to one less can be taken out
   */
  record Pieces(int held) implements Refusal {}
}
