package kerfwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds English left over in a German text, by words no German sentence of ours holds. */
public final class EnglishWords {
  private static final Pattern WORD =
      Pattern.compile(
          "(?<![\\p{L}-])(the|and|with|of|to|for|is|are|head|blades|shank|ring|usual|layers?|from"
              + "|step|steps|tooth|depth|case|pulp|water|dentine|enamel|missing|expected)(?![\\p{L}-])");

  private EnglishWords() {}

  /** Each word found, with what stands around it. */
  public static List<String> in(String text) {
    List<String> found = new ArrayList<>();
    Matcher words = WORD.matcher(text);
    while (words.find()) {
      int from = Math.max(0, words.start() - 40);
      found.add(text.substring(from, Math.min(text.length(), words.end() + 30)));
    }
    return found;
  }
}
