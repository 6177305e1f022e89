package kerfwright.app.print;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A document set as large as one page allows. */
public final class OnePage {
  private OnePage() {}

  /**
   * The first that fits on one page; the last where none does. What fits at one setting fits at
   * every smaller one, so that only some are tried.
   *
   * @param settings from large to small
   * @param document the document at a setting
   */
  public static <T> byte[] pdf(List<T> settings, Function<T, String> document) {
    int from = 0;
    int to = settings.size() - 1;
    byte @Nullable [] fits = null;
    while (from < to) {
      int middle = (from + to) / 2;
      byte[] pdf = Paper.pdf(document.apply(settings.get(middle)));
      if (Paper.pages(pdf) == 1) {
        fits = pdf;
        to = middle;
      } else {
        from = middle + 1;
      }
    }
    // what fitted last is the one the search ends at
    return fits == null ? Paper.pdf(document.apply(settings.get(to))) : fits;
  }
}
