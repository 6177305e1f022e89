package kerfwright.planner;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The drawer of the invented practice, read from the examples. */
final class DemoDrawer {
  private DemoDrawer() {}

  static DrawerSnapshot full() {
    List<DrawerInstrument> all = new ArrayList<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in = Files.newBufferedReader(Path.of("../examples/drawer-demo.csv"))) {
      for (CSVRecord row : format.parse(in)) {
        all.add(
            new DrawerInstrument(
                row.get("id"),
                InstrumentResolver.resolve(new DrawerFields(row.toMap())).orThrow(),
                Integer.parseInt(row.get("uses")),
                Integer.parseInt(row.get("sterilisations")),
                state(row.get("state"))));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new DrawerSnapshot(all);
  }

  static DrawerSnapshot only(Predicate<DrawerInstrument> wanted) {
    return new DrawerSnapshot(full().instruments().stream().filter(wanted).toList());
  }

  private static DrawerInstrument.State state(String id) {
    for (DrawerInstrument.State state : DrawerInstrument.State.values()) {
      if (state.id().equals(id)) {
        return state;
      }
    }
    throw new IllegalArgumentException(id);
  }
}
