package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Say;

/** Words broken into lines of at most so many letters. */
public final class Lines {
  private Lines() {}

  public static List<String> of(Say say, String words, int letters) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.split(" ")) {
      String rest = word;
      if (!line.isEmpty() && line.length() + 1 + word.length() > letters) {
        lines.add(line);
        line = "";
      }
      while (rest.length() > letters) {
        int cut = cut(say, rest, letters);
        String first = rest.substring(0, cut);
        lines.add(first.endsWith("-") ? first : first + "-");
        rest = rest.substring(cut);
      }
      line = line.isEmpty() ? rest : line + " " + rest;
    }
    lines.add(line);
    return lines;
  }

  /** Where a long word is broken: behind a hyphen, before a known part, else where room ends. */
  private static int cut(Say say, String word, int letters) {
    int best = word.lastIndexOf('-', letters - 1) + 1;
    for (String part : say.at("drawn.breaks").split(" ")) {
      int at = word.lastIndexOf(part, letters - 1);
      best = part.equals("-") ? best : Math.max(best, at);
    }
    return best > 1 ? best : letters - 1;
  }
}
