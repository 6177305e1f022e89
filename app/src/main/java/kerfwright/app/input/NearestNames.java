package kerfwright.app.input;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds the valid name a mistyped one most likely meant. */
public final class NearestNames {
  private NearestNames() {}

  /** The nearest of the names by single-letter edits, or null where none is near. */
  public static @Nullable String of(String typed, Collection<String> names) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    String best = null;
    int bestDistance = Math.max(2, wanted.length() / 3) + 1;
    for (String name : names) {
      int distance = distance(wanted, name.toLowerCase(Locale.ROOT).replace('_', '-'));
      if (distance < bestDistance) {
        best = name;
        bestDistance = distance;
      }
    }
    return best;
  }

  private static int distance(String a, String b) {
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int swap = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(swap, Math.min(above[j], row[j - 1]) + 1);
      }
      above = row;
    }
    return above[b.length()];
  }
}
