package kerfwright.app.feature;

import io.javalin.config.JavalinConfig;
import java.util.List;
import java.util.function.Function;
import kerfwright.app.words.Say;

/** One part of the practice as the server sees it: what it serves, and what it has to say today. */
public interface Feature {
  /** Features it is put together from; where their routes overlap, the first wins. */
  default List<Feature> parts() {
    return List.of();
  }

  /** Adds its routes, each with the right to call it. */
  default void routes(JavalinConfig config) {
    parts().forEach(one -> one.routes(config));
  }

  /** Addresses of its pages as they are now: every sort of page at least once. */
  default List<String> pages() {
    return ofParts(Feature::pages);
  }

  /** What needs attention today, empty where all is well; asked when the first page is opened. */
  default List<Notice> notices(Say say) {
    return ofParts(one -> one.notices(say));
  }

  private <T> List<T> ofParts(Function<Feature, List<T>> what) {
    return parts().stream().flatMap(one -> what.apply(one).stream()).toList();
  }

  /** Several as one. */
  static Feature of(Feature... parts) {
    List<Feature> all = List.of(parts);
    return new Feature() {
      @Override
      public List<Feature> parts() {
        return all;
      }
    };
  }
}
