package kerfwright.app.stocklist;

import java.util.List;
import java.util.Map;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * What became of one row.
 *
 * @param line where it stands in the file
 * @param cells its cells by field
 * @param item the instrument it names, null where something stands against it
 * @param problems what stands against it
 * @param doubts what was assumed or made up for it
 */
public record ListedRow(
    int line,
    Map<String, String> cells,
    @Nullable StockItem item,
    List<RowProblem> problems,
    List<Message> doubts) {
  public ListedRow {
    problems = List.copyOf(problems);
    doubts = List.copyOf(doubts);
  }

  public boolean understood() {
    return item != null;
  }
}
