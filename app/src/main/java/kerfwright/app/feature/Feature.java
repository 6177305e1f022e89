package kerfwright.app.feature;

import io.javalin.config.JavalinConfig;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import kerfwright.app.words.Say;

/** One part of the practice as the server sees it: what it serves, and what it has to say today. */
public interface Feature {
  /** Adds its routes, each with the right to call it. */
  void routes(JavalinConfig config);

  /** Addresses of its pages as they are now: every sort of page at least once. */
  default List<String> pages() {
    return List.of();
  }

  /** What needs attention today, empty where all is well; asked when the first page is opened. */
  default List<Notice> notices(Say say) {
    return List.of();
  }

  /** Several as one; where routes overlap, the first wins. */
  static Feature of(Feature... parts) {
    return new Feature() {
      @Override
      public void routes(JavalinConfig config) {
        Arrays.stream(parts).forEach(one -> one.routes(config));
      }

      @Override
      public List<String> pages() {
        return flat(Arrays.stream(parts).map(Feature::pages));
      }

      @Override
      public List<Notice> notices(Say say) {
        return flat(Arrays.stream(parts).map(one -> one.notices(say)));
      }

      private static <T> List<T> flat(Stream<List<T>> lists) {
        return lists.flatMap(List::stream).toList();
      }
    };
  }
}
