package kerfwright.app.stocklist;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Gathers rows into a table, and refuses what no list of instruments is. */
final class TableBuilder {
  private final String origin;
  private @Nullable List<String> header;
  private final List<List<String>> rows = new ArrayList<>();
  private final List<Integer> lines = new ArrayList<>();

  TableBuilder(String origin) {
    this.origin = origin;
  }

  void row(List<String> cells, int line) throws UnreadableList {
    if (cells.stream().allMatch(String::isBlank)) {
      return;
    }
    for (String cell : cells) {
      if (cell.length() > ListTable.LONGEST_CELL) {
        throw at(line, "listed.long-cell", ListTable.LONGEST_CELL);
      }
      if (looksLikeFormula(cell)) {
        throw at(line, "listed.formula", shortened(cell));
      }
      if (cell.indexOf('\0') >= 0) {
        throw at(line, "listed.binary");
      }
    }
    if (header == null) {
      header(cells, line);
    } else {
      body(header, cells, line);
    }
  }

  private void header(List<String> cells, int line) throws UnreadableList {
    if (cells.size() > ListTable.MOST_COLUMNS) {
      throw at(line, "listed.many-columns", ListTable.MOST_COLUMNS);
    }
    header = cells.stream().map(String::strip).toList();
  }

  private void body(List<String> names, List<String> cells, int line) throws UnreadableList {
    if (rows.size() == ListTable.MOST_ROWS) {
      throw at(line, "listed.many-rows", ListTable.MOST_ROWS);
    }
    List<String> row = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      row.add(i < cells.size() ? cells.get(i).strip() : "");
    }
    for (int i = names.size(); i < cells.size(); i++) {
      if (!cells.get(i).isBlank()) {
        throw at(line, "listed.many-cells", cells.size(), names.size());
      }
    }
    rows.add(List.copyOf(row));
    lines.add(line);
  }

  /** A sign that a spreadsheet would compute; a signed number is not one. */
  private static boolean looksLikeFormula(String cell) {
    String text = cell.strip();
    return text.length() > 1 && "=@+".indexOf(text.charAt(0)) >= 0 && !text.matches("\\+[0-9., ]+");
  }

  private static String shortened(String cell) {
    return cell.length() > 30 ? cell.substring(0, 30) + "..." : cell;
  }

  private UnreadableList at(int line, String key, Object... values) {
    return new UnreadableList(origin, line, key, values);
  }

  ListTable table() throws UnreadableList {
    if (header == null) {
      throw new UnreadableList(origin, 0, "listed.empty");
    }
    if (rows.isEmpty()) {
      throw new UnreadableList(origin, 0, "listed.no-rows");
    }
    return new ListTable(header, rows, lines);
  }
}
