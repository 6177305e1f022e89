package kerfwright.app.drawer;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import kerfwright.app.drawing.InstrumentDrawing;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/** Items and their history in words and drawings. */
public final class ItemWords {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private ItemWords() {}

  public static String when(Instant at) {
    return MINUTE.format(at.atZone(ZoneId.systemDefault()));
  }

  /** A small silhouette; empty where the sizes allow none. */
  public static String small(StockItem item) {
    try {
      return InstrumentDrawing.small("s-" + item.id(), item.properties());
    } catch (IllegalArgumentException noOutline) {
      return "";
    }
  }

  public static String full(StockItem item) {
    try {
      return InstrumentDrawing.full("s-" + item.id(), item.properties());
    } catch (IllegalArgumentException noOutline) {
      return "";
    }
  }

  public static String price(@Nullable BigDecimal price) {
    return price == null ? "not given" : price.toPlainString();
  }

  /** What one line of the history changed. */
  public static String change(DrawerEntry entry) {
    StockItem before = entry.before();
    StockItem after = entry.after();
    List<String> changes = before == null ? List.of() : differences(before, after);
    String list = changes.isEmpty() ? "" : ": " + String.join("; ", changes);
    return switch (entry.what()) {
      case ADDED -> "put into the drawer, " + after.state().label();
      case MOVED -> "moved" + list;
      case EDITED -> "changed" + list;
      case RECORDED -> "by the cut record" + list;
      case LOADED -> "put into a load" + list;
      case RELEASED -> "load released" + list;
      case RECALLED -> "load failed" + list;
      case SPLIT -> before == null ? "taken out of a lot" : "pieces taken out" + list;
      case UNDONE -> after.removed() ? "taken out again: was a mistake" : "taken back" + list;
    };
  }

  /** Every difference between two versions of an item. */
  static List<String> differences(StockItem before, StockItem after) {
    List<String> all = new ArrayList<>();
    compare(all, "state", before.state().label(), after.state().label());
    compare(all, "label", before.label(), after.label());
    compare(all, "pieces", before.pieces(), after.pieces());
    compare(all, "place", before.place(), after.place());
    compare(all, "price", price(before.price()), price(after.price()));
    compare(all, "single use", before.singleUse(), after.singleUse());
    compare(all, "uses", before.uses(), after.uses());
    compare(all, "sterilisations", before.sterilisations(), after.sterilisations());
    compare(all, "cut", before.cutMm3ByMaterial(), after.cutMm3ByMaterial());
    if (!before.fields().equals(after.fields())) {
      ItemForm.names()
          .forEach(
              name ->
                  compare(
                      all,
                      ItemForm.label(name),
                      ItemForm.value(before.fields(), name),
                      ItemForm.value(after.fields(), name)));
    }
    return all;
  }

  private static void compare(List<String> all, String what, Object before, Object after) {
    if (!Objects.equals(before, after)) {
      all.add(what + " " + shown(before) + " to " + shown(after));
    }
  }

  private static String shown(Object value) {
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    String text = value.toString();
    return text.isEmpty() ? "blank" : text;
  }
}
