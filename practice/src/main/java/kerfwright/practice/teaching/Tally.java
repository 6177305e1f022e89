package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Answers counted under one heading.
 *
 * @param first the first of them, which tells the heading: its topic or its set
 * @param right right answers
 * @param all answers
 */
public record Tally(Given first, int right, int all) {
  public int percent() {
    return all == 0 ? 0 : (int) Math.round(100.0 * right / all);
  }

  /** Answers counted by a heading, in the order the headings first come. */
  public static List<Tally> by(List<Given> answers, Function<Given, Object> heading) {
    Map<Object, Tally> tallies = new LinkedHashMap<>();
    for (Given one : answers) {
      Tally now = new Tally(one, one.right() ? 1 : 0, 1);
      tallies.merge(
          heading.apply(one), now, (a, b) -> new Tally(a.first, a.right + b.right, a.all + b.all));
    }
    return new ArrayList<>(tallies.values());
  }
}
