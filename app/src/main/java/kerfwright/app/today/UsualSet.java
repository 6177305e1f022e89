package kerfwright.app.today;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.ListFile;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.stocklist.UnreadableList;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/**
 * A drawer to begin with: one instrument for every operation that can be planned, common practice.
 * It names no maximum speed, because that stands on the maker's package alone; whoever takes it
 * tells the lowest ones on theirs.
 */
public final class UsualSet {
  private static final String FILE = "usual-set.csv";

  private UsualSet() {}

  /**
   * Pieces for a drawer.
   *
   * @param frictionGripRpm lowest maximum speed on the packages of friction grip instruments, rpm
   * @param latchRpm the same of latch instruments, rpm
   * @param place what marks them as not compared with the packages yet
   * @param taken labels in the drawer already; rows under these are left out
   */
  public static List<StockItem> pieces(
      int frictionGripRpm, int latchRpm, String place, Set<String> taken, Supplier<UUID> ids) {
    ListTable table = table();
    ColumnMapping mapping = ColumnMapping.guess(table.header());
    RowMeaning meaning = new RowMeaning(InstrumentState.CLEAN, ids, new HashSet<>());
    List<StockItem> pieces = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      Map<String, String> cells = new HashMap<>(mapping.cells(table.rows().get(i)));
      if (!taken.contains(cells.get("id"))) {
        boolean latch = latch(cells);
        cells.put("max_rpm", Integer.toString(latch ? latchRpm : frictionGripRpm));
        cells.put("place", place);
        pieces.add(
            java.util.Objects.requireNonNull(
                meaning.read(table.lines().get(i), cells, true).item(), FILE + " row " + i));
      }
    }
    return pieces;
  }

  /** The shank is the second group of an ISO number where no column tells it. */
  private static boolean latch(Map<String, String> cells) {
    String[] groups = cells.getOrDefault("iso", "").split(" ");
    return cells.getOrDefault("shank", "").equals("RA")
        || groups.length > 1 && groups[1].startsWith("20");
  }

  private static ListTable table() {
    try (InputStream in = UsualSet.class.getResourceAsStream(FILE)) {
      return ListFile.read(FILE, in.readAllBytes());
    } catch (IOException | UnreadableList broken) {
      throw new IllegalStateException(FILE, broken);
    }
  }
}
