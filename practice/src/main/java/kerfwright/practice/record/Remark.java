package kerfwright.practice.record;

import java.util.ArrayList;
import java.util.List;
import kerfwright.quantity.Identified;

/**
 * Something that should not have been so, written beside a use: the record tells what happened and
 * refuses no truth.
 *
 * @param kind what
 * @param arguments its figures and names, as the kind says
 */
public record Remark(Kind kind, List<String> arguments) {
  /** Kinds of remark. */
  public enum Kind implements Identified {
    /** The instrument was not ready; argument: id of its state. */
    NOT_READY,
    /** It was used on another case and not reprocessed since; argument: that case. */
    ANOTHER_CASE,
    /** It is for single use and was used before. */
    SINGLE_USE_AGAIN,
    /** It had been taken out of the drawer as an entry by mistake. */
    NOT_IN_DRAWER,
    /** Its load was not released when it was used; argument: name of the load. */
    LOAD_NOT_RELEASED,
    /** Its load failed; argument: name of the load. */
    LOAD_FAILED,
    /** The shelf life of its pouch was over; argument: last day. */
    POUCH_EXPIRED,
    /** The pouch named is not known; argument: its code. */
    POUCH_UNKNOWN,
    /** It is not among the contents of the pouch named; argument: its code. */
    NOT_IN_POUCH,
    /** Set faster than the maker allows; arguments: set and greatest speed, per minute. */
    TOO_FAST,
    /** Whoever reported it is none of the practice's people; argument: initials. */
    UNKNOWN_PERSON,
    /** Something of the handpiece, not the instrument; arguments: id of the kind, its arguments. */
    HANDPIECE,
    /** The device's clock is ahead of this machine's. */
    CLOCK_AHEAD;
  }

  public Remark {
    arguments = List.copyOf(arguments);
    if (arguments.stream().anyMatch(one -> one.isEmpty() || one.matches(".*\\s.*"))) {
      throw new IllegalArgumentException("Arguments hold no spaces: " + arguments);
    }
  }

  /** The same, said of the handpiece. */
  Remark ofHandpiece() {
    List<String> words = new ArrayList<>(List.of(kind.id()));
    words.addAll(arguments);
    return new Remark(Kind.HANDPIECE, words);
  }

  /** What a remark of the handpiece says of it; this one where it is none. */
  public Remark plain() {
    return kind != Kind.HANDPIECE
        ? this
        : new Remark(
            Identified.of(Kind.class, arguments.get(0)).orElseThrow(),
            arguments.subList(1, arguments.size()));
  }

  static Remark of(Kind kind, String... arguments) {
    return new Remark(kind, List.of(arguments));
  }
}
