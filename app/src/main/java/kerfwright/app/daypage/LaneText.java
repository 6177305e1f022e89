package kerfwright.app.daypage;

import java.util.List;
import kerfwright.practice.daylist.Booking;

/** As much of the words of a lane as there is room for. */
final class LaneText {
  /** Width of a letter, share of its size. */
  private static final double LETTER = 0.58;

  private LaneText() {}

  static double width(String words, int size) {
    return words.length() * size * LETTER;
  }

  /** As much as can be read whole: work, or the tooth alone. */
  static String second(Booking b, double width) {
    String both = (b.tooth() + " " + b.work()).strip();
    for (String words : List.of(what(b), both, b.work(), b.tooth())) {
      if (!words.isEmpty() && width(words, 16) <= width) {
        return words;
      }
    }
    return "";
  }

  static String what(Booking b) {
    String reference = b.caseReference();
    return b.tooth().isEmpty() ? b.work() : (b.tooth() + " " + b.work() + " " + reference).strip();
  }

  /** As much of the words as there is room for. */
  static String fit(String label, double width, int size) {
    int letters = (int) (width / (size * LETTER));
    return label.length() <= letters ? label : label.substring(0, Math.max(0, letters));
  }
}
