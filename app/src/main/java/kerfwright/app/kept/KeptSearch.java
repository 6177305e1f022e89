package kerfwright.app.kept;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Function;
import kerfwright.app.form.SearchFields;
import kerfwright.app.words.Say;
import kerfwright.practice.kept.KeptCaseQuery;
import org.jspecify.annotations.Nullable;

/**
 * What someone looks for among the kept cases.
 *
 * @param fields what was typed; what cannot be read in it is left out
 * @param query what to list
 */
public record KeptSearch(SearchFields fields, KeptCaseQuery query) {
  static final int SIZE = 50;

  static KeptSearch of(Function<String, @Nullable String> sent, Say say, ZoneId zone) {
    SearchFields fields = new SearchFields(sent, "reference", "tooth", "procedure", "from", "to");
    String page = sent.apply("page");
    LocalDate from = fields.day("from");
    LocalDate to = fields.day("to");
    return new KeptSearch(
        fields,
        new KeptCaseQuery(
            fields.text("reference"),
            fields.tooth(say),
            fields.text("procedure"),
            from == null ? null : from.atStartOfDay(zone).toInstant(),
            to == null ? null : to.plusDays(1).atStartOfDay(zone).toInstant(),
            page != null && page.matches("\\d{1,6}") ? Integer.parseInt(page) : 0,
            SIZE));
  }

  /** Address of the page of older cases. */
  public String older() {
    return "/cases?page=" + (query.page() + 1) + fields.address();
  }
}
