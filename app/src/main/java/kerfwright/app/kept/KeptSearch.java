package kerfwright.app.kept;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import kerfwright.app.form.Day;
import kerfwright.app.words.Say;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.practice.kept.KeptCaseQuery;
import org.jspecify.annotations.Nullable;

/**
 * What someone looks for among the kept cases.
 *
 * @param values what was typed, by field
 * @param faults keys of what cannot be read in it, and is left out
 * @param query what to list
 */
public record KeptSearch(Map<String, String> values, List<String> faults, KeptCaseQuery query) {
  static final int SIZE = 50;

  static KeptSearch of(Function<String, @Nullable String> sent, Say say, ZoneId zone) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String field : new String[] {"reference", "tooth", "procedure", "from", "to"}) {
      String value = sent.apply(field);
      values.put(field, value == null ? "" : value.strip());
    }
    String page = sent.apply("page");
    List<String> faults = new ArrayList<>();
    LocalDate from = day(values, "from", faults);
    LocalDate to = day(values, "to", faults);
    Tooth tooth = tooth(values, say, faults);
    return new KeptSearch(
        values,
        faults,
        new KeptCaseQuery(
            text(values, "reference"),
            tooth,
            text(values, "procedure"),
            from == null ? null : from.atStartOfDay(zone).toInstant(),
            to == null ? null : to.plusDays(1).atStartOfDay(zone).toInstant(),
            page != null && page.matches("\\d{1,6}") ? Integer.parseInt(page) : 0,
            SIZE));
  }

  private static @Nullable String text(Map<String, String> values, String field) {
    String value = values.get(field);
    return value == null || value.isEmpty() ? null : value;
  }

  private static @Nullable Tooth tooth(Map<String, String> values, Say say, List<String> faults) {
    String typed = text(values, "tooth");
    try {
      return typed == null ? null : ToothNotation.parse(typed, say.teeth());
    } catch (IllegalArgumentException none) {
      faults.add("record.fault-tooth");
      return null;
    }
  }

  private static @Nullable LocalDate day(
      Map<String, String> values, String field, List<String> faults) {
    String typed = text(values, field);
    Optional<LocalDate> day = typed == null ? Optional.empty() : Day.of(typed);
    if (typed != null && day.isEmpty()) {
      faults.add("record.fault-day");
    }
    return day.orElse(null);
  }

  public String at(String field) {
    return values.getOrDefault(field, "");
  }

  /** True where nothing in particular is looked for. */
  public boolean everything() {
    return values.values().stream().allMatch(String::isEmpty);
  }

  /** Address of the page of older cases. */
  public String older() {
    return "/cases?"
        + values.entrySet().stream()
            .map(
                one ->
                    one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"))
        + "&page="
        + (query.page() + 1);
  }
}
