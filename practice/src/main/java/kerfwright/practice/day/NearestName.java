package kerfwright.practice.day;

import java.util.Collection;

/** Finds the valid name nearest to a mistyped one, by least number of single-letter edits. */
final class NearestName {
  private NearestName() {}

  static String expected(String given, Collection<String> valid) {
    if (valid.isEmpty()) {
      return "a type listed under instruments (none is)";
    }
    String best = "";
    int bestEdits = Integer.MAX_VALUE;
    for (String name : valid) {
      int edits = edits(given, name);
      if (edits < bestEdits) {
        bestEdits = edits;
        best = name;
      }
    }
    return "a type listed under instruments, the nearest is \"" + best + "\"";
  }

  private static int edits(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int substituted = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(substituted, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
