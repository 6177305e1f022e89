package kerfwright.app.drawerfile;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.input.Bounds;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerInstrument.State;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * Reads one row of the drawer file as an instrument: its id, its counts and its state here, what it
 * is by the catalogue.
 */
final class RowReader {
  private static final Bounds COUNT = Bounds.from(0, 100_000, "");
  private static final List<String> OF_THE_PIECE = List.of("id", "uses", "sterilisations", "state");

  private final InstrumentLookup lookup;

  RowReader(InstrumentLookup lookup) {
    this.lookup = lookup;
  }

  @Nullable DrawerInstrument read(Row row) {
    String id = row.text("id");
    if (!id.matches("[\\p{L}\\p{N}._/#-]{1,40}")) {
      row.fault("id", "must be up to 40 letters, digits and . _ / # - without spaces");
    }
    Integer uses = row.count("uses", COUNT);
    Integer sterilisations = row.count("sterilisations", COUNT);
    State state = state(row);
    if (PieceKinds.byId(row.text("kind")).isPresent()) {
      return null; // nothing a plan could cut with
    }
    InstrumentLookup.Answer answer = lookup.resolve(cells(row));
    for (InstrumentLookup.Problem problem : answer.problems()) {
      row.fault(problem.column(), problem.text(), problem.nearest());
    }
    if (row.faulty() || answer.properties() == null || state == null) {
      return null;
    }
    return new DrawerInstrument(
        id,
        answer.properties(),
        uses == null ? 0 : uses,
        sterilisations == null ? 0 : sterilisations,
        state);
  }

  private static Map<String, String> cells(Row row) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (String column : DrawerFile.COLUMNS) {
      if (!OF_THE_PIECE.contains(column)) {
        cells.put(column, row.text(column));
      }
    }
    return cells;
  }

  private static @Nullable State state(Row row) {
    List<String> ids = Arrays.stream(State.values()).map(State::id).toList();
    if (row.text("state").isEmpty()) {
      row.fault("state", "is missing; expected one of " + String.join(", ", ids));
    }
    String id = row.oneOf("state", "state", ids);
    return Identified.of(State.class, id).orElse(null);
  }
}
