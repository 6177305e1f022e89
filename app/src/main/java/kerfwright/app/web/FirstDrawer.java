package kerfwright.app.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.SourceText;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.ListFile;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.ListedRow;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.stocklist.UnreadableList;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.Message;

/** Puts the rows of a drawer file into a drawer: all of them, or none and every fault. */
final class FirstDrawer {
  private FirstDrawer() {}

  static void fill(SourceText source, String note, DrawerService service) throws BadInput {
    String origin = source.origin();
    ListTable table = table(source);
    ColumnMapping mapping = ColumnMapping.guess(table.header());
    List<Fault> faults = new ArrayList<>();
    List<StockItem> items = new ArrayList<>();
    RowMeaning meaning = new RowMeaning(InstrumentState.QUARANTINE, service::newId, Set.of());
    for (ListedRow row : meaning.read(table, mapping)) {
      row.problems()
          .forEach(one -> faults.add(new Fault(origin, row.line(), one.field(), one.what(), null)));
      if (row.item() != null) {
        items.add(row.item());
      }
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    if (!service.add(items, note).done()) {
      throw new BadInput(origin, Message.of("command.serve-filled-meanwhile"));
    }
  }

  private static ListTable table(SourceText source) throws BadInput {
    try {
      return ListFile.read(source.origin(), source.text().getBytes(StandardCharsets.UTF_8));
    } catch (UnreadableList unreadable) {
      throw new BadInput("--data", unreadable.placed());
    }
  }
}
