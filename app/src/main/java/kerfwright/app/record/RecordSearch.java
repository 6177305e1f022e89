package kerfwright.app.record;

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
import kerfwright.app.form.Day;
import kerfwright.app.form.Sent;
import kerfwright.app.words.Say;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;
import org.jspecify.annotations.Nullable;

/**
 * What someone looks for in the record.
 *
 * @param values what was typed, by field
 * @param faults keys of what is wrong with it
 * @param instrument the instrument named, or null
 * @param load the load named, or null
 * @param query what to list, null where something is wrong
 */
public record RecordSearch(
    Map<String, String> values,
    List<String> faults,
    @Nullable StockItem instrument,
    @Nullable Load load,
    @Nullable RecordQuery query) {
  static final List<String> FIELDS = List.of("case", "tooth", "instrument", "load", "from", "to");
  static final int SIZE = 50;

  static RecordSearch of(
      Function<String, @Nullable String> sent, Say say, Drawer drawer, Loads loads, ZoneId zone) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String field : FIELDS) {
      String value = sent.apply(field);
      values.put(field, value == null ? "" : value.strip());
    }
    Reading read = new Reading(values);
    String reference = read.text("case");
    Tooth tooth = read.tooth(say);
    StockItem instrument = read.instrument(drawer);
    Load load = read.load(loads);
    LocalDate from = read.day("from");
    LocalDate to = read.day("to");
    RecordQuery query =
        new RecordQuery(
            reference.isEmpty() ? null : reference,
            tooth,
            instrument == null ? null : instrument.id(),
            load == null ? null : load.id(),
            from == null ? null : from.atStartOfDay(zone).toInstant(),
            to == null ? null : to.plusDays(1).atStartOfDay(zone).toInstant(),
            number(sent.apply("older")),
            SIZE);
    return new RecordSearch(
        values, read.faults, instrument, load, read.faults.isEmpty() ? query : null);
  }

  private static @Nullable Long number(@Nullable String text) {
    return text == null || !text.matches("\\d{1,9}") ? null : Long.valueOf(text);
  }

  public String at(String field) {
    return values.getOrDefault(field, "");
  }

  /** True where nothing in particular is looked for. */
  public boolean everything() {
    return values.values().stream().allMatch(String::isEmpty);
  }

  /** The address of the page after one that ends with this number. */
  public String older(Long number) {
    StringBuilder address = new StringBuilder("/records?older=").append(number);
    values.forEach(
        (field, value) -> {
          if (!value.isEmpty()) {
            address
                .append('&')
                .append(field)
                .append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8));
          }
        });
    return address.toString();
  }

  /** Takes fields for what they mean. */
  private static final class Reading {
    private final Map<String, String> values;
    private final List<String> faults = new ArrayList<>();

    Reading(Map<String, String> values) {
      this.values = values;
    }

    String text(String field) {
      return values.getOrDefault(field, "");
    }

    @Nullable Tooth tooth(Say say) {
      String text = text("tooth");
      if (text.isEmpty()) {
        return null;
      }
      try {
        return ToothNotation.parse(text, say.teeth());
      } catch (IllegalArgumentException none) {
        faults.add("record.fault-tooth");
        return null;
      }
    }

    @Nullable StockItem instrument(Drawer drawer) {
      String text = text("instrument");
      if (text.isEmpty()) {
        return null;
      }
      Optional<StockItem> found = Sent.id(text).flatMap(drawer::find);
      if (found.isEmpty()) {
        found = drawer.labelled(text);
      }
      if (found.isEmpty()) {
        faults.add("record.fault-instrument");
      }
      return found.orElse(null);
    }

    @Nullable Load load(Loads loads) {
      String text = text("load");
      if (text.isEmpty()) {
        return null;
      }
      Optional<Load> found = loads.named(text);
      if (found.isEmpty()) {
        faults.add("record.fault-load");
      }
      return found.orElse(null);
    }

    @Nullable LocalDate day(String field) {
      String text = text(field);
      if (text.isEmpty()) {
        return null;
      }
      Optional<LocalDate> day = Day.of(text);
      if (day.isPresent()) {
        return day.get();
      }
      faults.add("record.fault-day");
      return null;
    }
  }
}
