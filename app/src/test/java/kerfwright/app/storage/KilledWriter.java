package kerfwright.app.storage;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;

/** Writes to a drawer until it is killed, and says each change only after it was acknowledged. */
final class KilledWriter {
  private KilledWriter() {}

  /** A JDBC URL of a server, or a file. */
  static Database open(String place) throws BadInput {
    return place.startsWith("jdbc:") ? Database.server(place) : Database.file(Path.of(place));
  }

  public static void main(String[] arguments) throws Exception {
    DrawerService service =
        new DrawerService(
            new StoredDrawer(open(arguments[0])),
            new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(9)),
            Clock.systemUTC());
    DrawerFields fields =
        new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8"));
    for (int i = 0; ; i++) {
      StockItem item = StockItem.fresh(service.newId(), "K" + i, fields);
      if (!service.add(List.of(item), "").done()) {
        throw new IllegalStateException("not written");
      }
      System.out.println(item.label());
      System.out.flush();
    }
  }
}
