package kerfwright.app.drawerfile;

import java.util.List;
import java.util.Map;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Tells what an instrument is from the cells of its row, by the name of their column. */
@FunctionalInterface
public interface InstrumentLookup {
  Answer resolve(Map<String, String> cells);

  /**
   * The instrument, or what stands against it.
   *
   * @param properties what it is; null where a problem was found
   * @param problems what is wrong, each with the column it stands in
   */
  record Answer(@Nullable InstrumentProperties properties, List<Problem> problems) {
    public Answer {
      problems = List.copyOf(problems);
    }
  }

  /** Something wrong in one column. */
  record Problem(String column, Message what, @Nullable String nearest) {}
}
