package kerfwright.catalogue;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The valid names nearest to one that is not valid, so that every error can offer a way on.
 *
 * <p>Nearness is the number of letters to add, drop, change or swap with a neighbour (optimal
 * string alignment distance), upper and lower case, hyphens, spaces and underscores counting the
 * same. A name that merely begins with or contains what was typed counts as near too. Equal
 * distances keep the order given.
 */
public final class NearestName {
  private NearestName() {}

  /** The nearest name, unless nothing resembles what was typed. */
  public static Optional<String> nearest(String typed, Collection<String> valid) {
    return suggestions(typed, valid, 1).stream().findFirst();
  }

  /** Up to {@code most} names that resemble what was typed, nearest first. */
  public static List<String> suggestions(String typed, Collection<String> valid, int most) {
    String wanted = folded(typed);
    if (wanted.isEmpty()) {
      return List.of();
    }
    record Scored(String name, int distance) {}
    return valid.stream()
        .distinct()
        .map(name -> new Scored(name, score(wanted, folded(name))))
        .filter(scored -> scored.distance <= tolerance(wanted))
        .sorted(Comparator.comparingInt(Scored::distance))
        .limit(most)
        .map(Scored::name)
        .toList();
  }

  private static int tolerance(String wanted) {
    return Math.max(1, Math.min(4, (wanted.length() + 1) / 3));
  }

  private static int score(String wanted, String name) {
    int distance = distance(wanted, name);
    if (wanted.length() >= 3 && name.startsWith(wanted)) {
      return Math.min(distance, 1);
    }
    if (wanted.length() >= 4 && (name.contains(wanted) || wanted.contains(name))) {
      return Math.min(distance, 2);
    }
    return distance;
  }

  private static String folded(String text) {
    String trimmed = text.length() > 100 ? text.substring(0, 100) : text;
    return trimmed.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
  }

  /** Optimal string alignment distance of two texts. */
  static int distance(String from, String to) {
    int[] twoBack = new int[to.length() + 1];
    int[] oneBack = new int[to.length() + 1];
    int[] row = new int[to.length() + 1];
    Arrays.setAll(oneBack, j -> j);
    for (int i = 1; i <= from.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], oneBack[j]) + 1, oneBack[j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && from.charAt(i - 1) == to.charAt(j - 2)
                && from.charAt(i - 2) == to.charAt(j - 1);
        if (swapped) {
          row[j] = Math.min(row[j], twoBack[j - 2] + 1);
        }
      }
      int[] free = twoBack;
      twoBack = oneBack;
      oneBack = row;
      row = free;
    }
    return oneBack[to.length()];
  }
}
