package kerfwright.app.stocklist;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
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

  void row(List<String> cells, int line) throws BadInput {
    if (cells.stream().allMatch(String::isBlank)) {
      return;
    }
    for (String cell : cells) {
      if (cell.length() > ListTable.LONGEST_CELL) {
        throw at(line, "a cell holds more than " + ListTable.LONGEST_CELL + " characters");
      }
      if (looksLikeFormula(cell)) {
        throw at(line, "holds a formula ('" + shortened(cell) + "'); save the list with values");
      }
      if (cell.indexOf('\0') >= 0) {
        throw at(line, "holds binary data, text was expected");
      }
    }
    if (header == null) {
      header(cells, line);
    } else {
      body(header, cells, line);
    }
  }

  private void header(List<String> cells, int line) throws BadInput {
    if (cells.size() > ListTable.MOST_COLUMNS) {
      throw at(line, "has more than " + ListTable.MOST_COLUMNS + " columns");
    }
    header = cells.stream().map(String::strip).toList();
  }

  private void body(List<String> names, List<String> cells, int line) throws BadInput {
    if (rows.size() == ListTable.MOST_ROWS) {
      throw at(line, "is row " + (ListTable.MOST_ROWS + 1) + "; that is the most that is read");
    }
    List<String> row = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      row.add(i < cells.size() ? cells.get(i).strip() : "");
    }
    for (int i = names.size(); i < cells.size(); i++) {
      if (!cells.get(i).isBlank()) {
        throw at(line, "holds " + cells.size() + " cells, the header " + names.size());
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

  private BadInput at(int line, String problem) {
    return new BadInput(List.of(new Fault(origin, line, "", problem, null)));
  }

  ListTable table() throws BadInput {
    if (header == null) {
      throw new BadInput(
          origin, "is empty; a first row with the names of the columns was expected");
    }
    if (rows.isEmpty()) {
      throw new BadInput(origin, "holds no row below the names of its columns");
    }
    return new ListTable(header, rows, lines);
  }
}
