package kerfwright.app.record;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Function;
import kerfwright.app.form.SearchFields;
import kerfwright.app.form.Sent;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;
import org.jspecify.annotations.Nullable;

/**
 * What someone looks for in the record.
 *
 * @param fields what was typed, and what is wrong with it
 * @param instrument the instrument named, or null
 * @param load the load named, or null
 * @param query what to list, null where something is wrong
 */
public record RecordSearch(
    SearchFields fields,
    @Nullable StockItem instrument,
    @Nullable Load load,
    @Nullable RecordQuery query) {
  static final int SIZE = 50;

  static RecordSearch of(
      Function<String, @Nullable String> sent, Say say, Drawer drawer, Loads loads, ZoneId zone) {
    SearchFields fields =
        new SearchFields(sent, "case", "tooth", "instrument", "load", "from", "to");
    StockItem instrument =
        fields.found(
            "instrument",
            "record.fault-instrument",
            text -> Sent.id(text).flatMap(drawer::find).or(() -> drawer.labelled(text)));
    Load load = fields.found("load", "record.fault-load", loads::named);
    LocalDate from = fields.day("from");
    LocalDate to = fields.day("to");
    RecordQuery query =
        new RecordQuery(
            fields.text("case"),
            fields.tooth(say),
            instrument == null ? null : instrument.id(),
            load == null ? null : load.id(),
            from == null ? null : from.atStartOfDay(zone).toInstant(),
            to == null ? null : to.plusDays(1).atStartOfDay(zone).toInstant(),
            number(sent.apply("older")),
            SIZE);
    return new RecordSearch(fields, instrument, load, fields.faults().isEmpty() ? query : null);
  }

  private static @Nullable Long number(@Nullable String text) {
    return text == null || !text.matches("\\d{1,9}") ? null : Long.valueOf(text);
  }

  /** The address of the page after one that ends with this number. */
  public String older(Long number) {
    return "/records?older=" + number + fields.address();
  }
}
