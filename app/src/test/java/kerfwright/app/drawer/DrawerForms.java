package kerfwright.app.drawer;

import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import kerfwright.app.stocklist.ListedRow;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/** The forms of the drawer's pages, for the fuzzer. */
public final class DrawerForms {
  private DrawerForms() {}

  public static void item(UnaryOperator<String> sent) {
    ItemForm form = ItemForm.of(sent::apply);
    ListedRow row =
        new RowMeaning(InstrumentState.QUARANTINE, UUID::randomUUID, Set.of())
            .read(1, form.values(), true);
    StockItem item = row.item();
    if (item != null) {
      ItemForm.like(item);
    }
  }

  public static void list(UnaryOperator<String> sent) {
    ListForm form = ListForm.of(sent::apply);
    form.toQuery();
    form.turnedTo(form.page() + 1);
  }
}
