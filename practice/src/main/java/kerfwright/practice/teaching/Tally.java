package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Answers counted under one heading.
 *
 * @param of the heading: a topic or a set
 * @param right right answers
 * @param all answers
 */
public record Tally(String of, int right, int all) {
  public int percent() {
    return all == 0 ? 0 : (int) Math.round(100.0 * right / all);
  }

  /** Answers counted by a heading, in the order the headings first come. */
  public static List<Tally> by(List<Given> answers, Function<Given, String> heading) {
    Map<String, Tally> tallies = new LinkedHashMap<>();
    for (Given one : answers) {
      Tally now = new Tally(heading.apply(one), one.right() ? 1 : 0, 1);
      tallies.merge(now.of(), now, (a, b) -> new Tally(a.of, a.right + b.right, a.all + b.all));
    }
    return new ArrayList<>(tallies.values());
  }
}
