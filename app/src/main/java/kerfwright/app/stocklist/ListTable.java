package kerfwright.app.stocklist;

import java.util.List;

/**
 * A table as it was handed in.
 *
 * @param header names of its columns
 * @param rows its rows, each as wide as the header
 * @param lines where each row began, to name it in messages
 */
public record ListTable(List<String> header, List<List<String>> rows, List<Integer> lines) {
  /** Most rows read. */
  public static final int MOST_ROWS = 50_000;

  /** Most columns read. */
  public static final int MOST_COLUMNS = 100;

  /** Longest cell read. */
  public static final int LONGEST_CELL = 500;

  public ListTable {
    header = List.copyOf(header);
    rows = List.copyOf(rows);
    lines = List.copyOf(lines);
  }
}
