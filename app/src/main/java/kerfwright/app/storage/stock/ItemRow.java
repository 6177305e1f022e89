package kerfwright.app.storage.stock;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Locale;
import java.util.regex.Pattern;
import kerfwright.app.storage.Row;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.StockItem;

/** One item as a row of its table, both ways. */
final class ItemRow {
  private static final Pattern DIGITS = Pattern.compile("\\d+");

  private ItemRow() {}

  static StockItem read(ResultSet row) throws SQLException {
    String price = row.getString("price");
    DrawerFields fields = ItemJson.fields(row.getString("fields"));
    return new StockItem(
        Row.id(row, "id"),
        row.getInt("version"),
        row.getString("label"),
        row.getInt("pieces"),
        fields,
        ItemJson.rotary(fields),
        row.getInt("single_use") == 1,
        row.getString("place"),
        price == null ? null : new BigDecimal(price),
        row.getInt("uses"),
        row.getInt("sterilisations"),
        ItemJson.volumes(row.getString("cut_mm3")),
        ItemJson.state(row.getString("state")),
        row.getInt("removed") == 1);
  }

  static Row of(StockItem item) {
    BigDecimal price = item.price();
    InstrumentProperties what = item.rotary();
    return new Row("stock_item")
        .with("id", item.id())
        .with("version", item.version())
        .with("label", item.label())
        .with("sort_key", sortKey(item.label()))
        .with("pieces", item.pieces())
        .with("fields", ItemJson.fieldsText(item.fields()))
        .with("kind", what == null ? item.fields().kind() : what.kind().id())
        .with("shape", what == null ? "" : what.shape().id())
        .with("shank", what == null ? "" : what.shank().name())
        .with("words", words(item))
        .with("single_use", item.singleUse())
        .with("place", item.place())
        .with("price", price == null ? null : price.toPlainString())
        .with("uses", item.uses())
        .with("sterilisations", item.sterilisations())
        .with("cut_mm3", ItemJson.volumesText(item.cutMm3ByMaterial()))
        .with("state", item.state())
        .with("removed", item.removed());
  }

  /** D2 stands before D10. */
  static String sortKey(String label) {
    String lower = label.toLowerCase(Locale.ROOT);
    return DIGITS
        .matcher(lower)
        .replaceAll(found -> "0".repeat(Math.max(0, 8 - found.group().length())) + found.group());
  }

  /** Everything a search may hit, in lower case. */
  private static String words(StockItem item) {
    StringBuilder words = new StringBuilder(item.label());
    InstrumentProperties what = item.rotary();
    if (what == null) {
      item.pieceKind()
          .ifPresent(
              kind -> {
                words.append(' ').append(kind.id()).append(' ').append(kind.sort().id());
                for (Language language : Language.values()) {
                  words.append(' ').append(Labels.piece(Say.in(language), kind));
                }
              });
      return words.append(' ').append(item.place()).toString().toLowerCase(Locale.ROOT);
    }
    words.append(' ').append(what.kind().label()).append(' ').append(what.shapeName());
    words.append(' ').append(what.shape().label()).append(' ').append(what.shank().name());
    words.append(' ').append(what.shank().label());
    if (what.iso() != null) {
      words.append(' ').append(what.iso()).append(' ').append(what.iso().replace(" ", ""));
    }
    if (what.us() != null) {
      words.append(" us ").append(what.us());
    }
    if (what.grit() != null) {
      words.append(' ').append(what.grit().label()).append(' ').append(what.grit().ring());
    }
    if (what.blades() != null) {
      words.append(' ').append(what.blades()).append(" blades");
    }
    return words.append(' ').append(item.place()).toString().toLowerCase(Locale.ROOT);
  }
}
