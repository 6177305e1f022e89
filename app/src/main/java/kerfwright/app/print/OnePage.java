package kerfwright.app.print;

import java.util.List;
import java.util.function.Function;

/** A document set as large as one page allows. */
public final class OnePage {
  private OnePage() {}

  /**
   * The first that fits on one page; the last where none does.
   *
   * @param settings from large to small
   * @param document the document at a setting
   */
  public static <T> byte[] pdf(List<T> settings, Function<T, String> document) {
    byte[] pdf = new byte[0];
    for (T setting : settings) {
      pdf = Paper.pdf(document.apply(setting));
      if (Paper.pages(pdf) == 1) {
        break;
      }
    }
    return pdf;
  }
}
