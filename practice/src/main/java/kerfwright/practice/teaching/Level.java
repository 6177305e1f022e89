package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import kerfwright.quantity.Identified;

/** How hard a question is: how near the wrong answers lie to the right one. */
public enum Level implements Identified {
  EASY(2.0 / 3, 1),
  MEDIUM(1.0 / 4, 3.0 / 4),
  HARD(0, 1.0 / 3);

  private final double from;
  private final double to;

  Level(double from, double to) {
    this.from = from;
    this.to = to;
  }

  /** Some of those sorted from near to far: the nearest third, the middle half, the far third. */
  <T> List<T> pick(List<T> nearFirst, int count, Random random) {
    int n = nearFirst.size();
    int first = Math.min((int) Math.floor(from * n), n - count);
    int last = Math.max((int) Math.ceil(to * n), first + count);
    List<T> window = new ArrayList<>(nearFirst.subList(first, Math.min(n, last)));
    Collections.shuffle(window, random);
    return window.subList(0, count);
  }
}
