package kerfwright.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * The instruments of one type, all alike but for their wear.
 *
 * @param type the type's name
 * @param life uses after which an instrument is withdrawn
 * @param uses uses so far, one number an instrument; the place in the list is its index
 * @param dirty indexes of instruments that are not clean when the day starts
 */
public record Stock(String type, int life, List<Integer> uses, Set<Integer> dirty) {
  public Stock {
    uses = List.copyOf(uses);
    dirty = Set.copyOf(dirty);
  }

  public Stock(String type, int life, List<Integer> uses) {
    this(type, life, uses, Set.of());
  }

  /** The same stock with so many new, clean instruments at the end of the list. */
  public Stock withNew(int pieces) {
    List<Integer> more = new ArrayList<>(uses);
    more.addAll(Collections.nCopies(pieces, 0));
    return new Stock(type, life, more, dirty);
  }
}
