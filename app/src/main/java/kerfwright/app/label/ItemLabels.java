package kerfwright.app.label;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.drawer.ItemWords;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.OwnCode;

/** Labels of instruments of the drawer. */
public record ItemLabels(Drawer drawer) {
  public Optional<Label> label(UUID id, Say say) {
    return drawer
        .find(id)
        .filter(item -> !item.removed())
        .map(
            item ->
                new Label(
                    new OwnCode(OwnCode.Kind.INSTRUMENT, id).text(),
                    item.label(),
                    lines(item, say)));
  }

  /** The page of an instrument. */
  public Optional<String> page(UUID id) {
    return drawer.find(id).map(ItemLabels::page);
  }

  static String page(StockItem item) {
    return "/drawer/item/" + item.id() + "?scanned=1";
  }

  private static List<String> lines(StockItem item, Say say) {
    return List.of(
        ItemWords.number(item),
        ItemWords.brief(say, item),
        item.place(),
        item.singleUse() ? say.at("labels.single-use") : "");
  }
}
