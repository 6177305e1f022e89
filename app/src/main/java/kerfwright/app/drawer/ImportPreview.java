package kerfwright.app.drawer;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.ListedRow;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;

/**
 * What a list would become.
 *
 * @param header names of its columns
 * @param example first row, to tell the columns by
 * @param mapping what the columns stand for
 * @param otherwise state of those whose row tells none
 * @param good rows understood without doubt
 * @param doubtful rows understood, with something assumed
 * @param bad rows that cannot be taken over
 */
public record ImportPreview(
    List<String> header,
    List<String> example,
    ColumnMapping mapping,
    InstrumentState otherwise,
    List<ListedRow> good,
    List<ListedRow> doubtful,
    List<ListedRow> bad) {
  /** Rows of each kind shown; the numbers count them all. */
  public static final int SHOWN = 200;

  static ImportPreview of(
      DrawerService service, ListTable table, ColumnMapping mapping, InstrumentState otherwise) {
    RowMeaning meaning =
        new RowMeaning(otherwise, service::newId, Takeovers.labels(service, table, mapping));
    List<ListedRow> good = new ArrayList<>();
    List<ListedRow> doubtful = new ArrayList<>();
    List<ListedRow> bad = new ArrayList<>();
    for (ListedRow row : meaning.read(table, mapping)) {
      (row.understood() ? row.doubts().isEmpty() ? good : doubtful : bad).add(row);
    }
    return new ImportPreview(
        table.header(), table.rows().get(0), mapping, otherwise, good, doubtful, bad);
  }

  public int understood() {
    return good.size() + doubtful.size();
  }
}
