package kerfwright.practice.people;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import kerfwright.practice.record.ChainCheck;
import kerfwright.quantity.Identified;

/** Who saw, exported and changed what: one chain, only ever added to. */
public interface Trail {
  /** Writes at the end of the chain; returns when it is safe from the end of the process. */
  void add(Entry entry);

  /** Newest first, up to a number; empty texts ask for any. */
  List<Line> find(Query query, int most);

  /** All, oldest first. */
  void walk(Consumer<Line> each);

  /** Whether every line is as it was written. */
  ChainCheck check();

  /** What somebody did. */
  enum Act implements Identified {
    SIGNED_IN,
    SWITCHED,
    SIGN_IN_REFUSED,
    SAW,
    EXPORTED,
    CHANGED,
    REFUSED;
  }

  /**
   * One thing done.
   *
   * @param at when
   * @param who initials, or the name of a token
   * @param act what kind of thing
   * @param what where, and of which case or id; no values
   */
  record Entry(Instant at, String who, Act act, String what) {
    /** As it stands in the chain. */
    public String line() {
      return at + "\t" + who + "\t" + act.id() + "\t" + what;
    }
  }

  /** An entry at its place. */
  record Line(long number, Entry entry, String hash) {}

  /**
   * What to look for.
   *
   * @param who initials, empty for anybody
   * @param what part of the place, case or id, empty for any
   * @param from at or after
   * @param until before
   */
  record Query(String who, String what, Instant from, Instant until) {}
}
