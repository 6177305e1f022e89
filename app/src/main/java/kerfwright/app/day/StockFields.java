package kerfwright.app.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.quantity.Message;
import kerfwright.schedule.Stock;
import org.jspecify.annotations.Nullable;

/** Reads {@code instruments}. */
final class StockFields {
  private static final Bounds LIFE = Bounds.from(1, 100_000, "uses");
  private static final Bounds USES = Bounds.from(0, 100_000, "uses");
  private static final Bounds INDEX = Bounds.from(0, 100_000, "");

  private StockFields() {}

  static List<Stock> read(Fields fields, Faults faults) {
    List<Stock> stock = new ArrayList<>();
    for (Fields row :
        DayFile.rows(fields, faults, "instruments", "{type, life, used: [uses]}", true)) {
      String type = row.text("type", Message.of("day.file-type"));
      Integer life = WholeNumber.read(row, faults, "life", LIFE);
      List<Integer> uses =
          numbers(row, faults, "used", row.required("used", Message.of("fault.found-list")), USES);
      Set<Integer> dirty =
          new TreeSet<>(numbers(row, faults, "dirty", row.optional("dirty"), INDEX));
      row.rejectUnknown();
      if (type != null && life != null) {
        stock.add(new Stock(type, life, uses, dirty));
      }
    }
    return stock;
  }

  private static List<Integer> numbers(
      Fields row, Faults faults, String name, @Nullable Node node, Bounds bounds) {
    List<Integer> numbers = new ArrayList<>();
    List<Node> items = node == null ? null : row.items(name, node);
    if (items == null) {
      return numbers;
    }
    for (int i = 0; i < items.size(); i++) {
      Integer n = WholeNumber.read(faults, row.path(name) + "[" + i + "]", items.get(i), bounds);
      if (n != null) {
        numbers.add(n);
      }
    }
    return numbers;
  }
}
