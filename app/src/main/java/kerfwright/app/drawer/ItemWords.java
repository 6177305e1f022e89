package kerfwright.app.drawer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/** Items and their history in words and drawings. */
public final class ItemWords {
  private ItemWords() {}

  /** A small silhouette; empty where the sizes allow none. */
  public static String small(Say say, StockItem item) {
    if (!item.isRotary()) {
      return "";
    }
    try {
      return InstrumentDrawing.small(say, "s-" + item.id(), item.properties());
    } catch (IllegalArgumentException noOutline) {
      return "";
    }
  }

  public static String full(Say say, StockItem item) {
    if (!item.isRotary()) {
      return "";
    }
    try {
      return InstrumentDrawing.full(say, "s-" + item.id(), item.properties());
    } catch (IllegalArgumentException noOutline) {
      return "";
    }
  }

  /** What the piece is, in words. */
  public static String what(Say say, StockItem item) {
    return item.pieceKind()
        .map(kind -> Labels.piece(say, kind))
        .orElseGet(() -> Words.instrument(say, item.properties()));
  }

  /** The same in few words. */
  public static String brief(Say say, StockItem item) {
    return item.pieceKind()
        .map(kind -> Labels.piece(say, kind))
        .orElseGet(() -> Words.shortInstrument(say, item.properties()));
  }

  /** Its number or US size; empty where it has none. */
  public static String number(StockItem item) {
    return item.isRotary() ? Words.number(item.properties()) : "";
  }

  /** Its greatest speed; a piece that is no rotary instrument has none of its own here. */
  public static String speed(Say say, StockItem item) {
    if (!item.isRotary()) {
      return "";
    }
    RotationalSpeed greatest = item.properties().maximumSpeed();
    return greatest == null ? say.at("drawer.no-speed") : say.at("drawer.speed", greatest.rpm());
  }

  /** Share of a life left with its range; a single-use piece has one use or none. */
  public static String life(Say say, StockItem item) {
    if (!item.isRotary()) {
      return say.at("drawer.no-wear-model");
    }
    if (item.singleUse()) {
      return say.at(item.uses() == 0 ? "drawer.life-one-use" : "drawer.life-none");
    }
    return item.lifeLeft()
        .map(
            left ->
                say.at(
                    left.low() == left.high() ? "drawer.life-exact" : "drawer.life-range",
                    Math.round(left.typical() * 100),
                    Math.round(left.low() * 100),
                    Math.round(left.high() * 100)))
        .orElseGet(() -> say.at("drawer.life-unknown"));
  }

  public static String price(Say say, @Nullable BigDecimal price) {
    return price == null ? say.at("drawer.not-given") : say.figures(price.toPlainString());
  }

  /** What one line of the history changed. */
  public static String change(Say say, DrawerEntry entry) {
    StockItem before = entry.before();
    StockItem after = entry.after();
    List<String> changes = before == null ? List.of() : differences(say, before, after);
    String what =
        switch (entry.what()) {
          case ADDED -> say.at("drawer.history-added", Labels.state(say, after.state()));
          case MOVED -> say.at("drawer.history-moved");
          case EDITED -> say.at("drawer.history-edited");
          case RECORDED -> say.at("drawer.history-recorded");
          case LOADED -> say.at("drawer.history-loaded");
          case RELEASED -> say.at("drawer.history-released");
          case RECALLED -> say.at("drawer.history-recalled");
          case SPLIT -> say.at(before == null ? "drawer.history-part" : "drawer.history-split");
          case UNDONE ->
              say.at(after.removed() ? "drawer.history-removed" : "drawer.history-undone");
        };
    boolean told = changes.isEmpty() || after.removed();
    return told ? what : say.at("drawer.history-with", what, String.join("; ", changes));
  }

  /** Every difference between two versions of an item. */
  static List<String> differences(Say say, StockItem before, StockItem after) {
    Differences all = new Differences(say, before, after, new ArrayList<>());
    all.compare("state", item -> Labels.state(say, item.state()));
    all.compare("id", StockItem::label);
    all.compare("pieces", StockItem::pieces);
    all.compare("place", StockItem::place);
    all.compare("price", item -> price(say, item.price()));
    all.compare("single_use", item -> say.at(item.singleUse() ? "drawer.yes" : "drawer.no"));
    all.compare("uses", StockItem::uses);
    all.compare("sterilisations", StockItem::sterilisations);
    for (String name : ItemForm.WHAT) {
      all.compare(name, item -> item.fields().at(name));
    }
    if (!before.cutMm3ByMaterial().equals(after.cutMm3ByMaterial())) {
      all.lines.add(say.at("drawer.history-cut"));
    }
    return all.lines;
  }

  private record Differences(Say say, StockItem before, StockItem after, List<String> lines) {
    void compare(String field, Function<StockItem, Object> part) {
      Object was = part.apply(before);
      Object is = part.apply(after);
      if (!Objects.equals(was, is)) {
        lines.add(
            say.at("drawer.history-from-to", ItemForm.label(say, field), shown(was), shown(is)));
      }
    }

    private String shown(Object value) {
      String text = value.toString();
      return text.isEmpty() ? say.at("drawer.blank") : text;
    }
  }
}
