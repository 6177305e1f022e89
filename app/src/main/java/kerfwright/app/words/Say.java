package kerfwright.app.words;

import java.math.BigDecimal;
import java.text.ChoiceFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.catalogue.tooth.ToothSystem;
import kerfwright.quantity.Message;

/**
 * Says things to people: texts by key in one language, figures with the decimal mark they use.
 *
 * <p>A key is {@code feature.name}; its text stands in {@code <feature>_<language>.properties}.
 *
 * @param language the language of all texts
 * @param decimalComma true where figures are written with a comma
 * @param teeth how teeth are named
 */
public record Say(Language language, boolean decimalComma, ToothSystem teeth) {
  private static final char GAP = '\u00A0';
  private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");

  /** Speaks a language with its own decimal mark; teeth by FDI. */
  public static Say in(Language language) {
    return new Say(language, language.decimalComma(), ToothSystem.FDI);
  }

  /**
   * The text of a key with its placeholders filled.
   *
   * @param values a number is written whole, without what stands behind its point; figures go in as
   *     a BigDecimal or as text
   * @throws IllegalStateException where the key is not known
   */
  public String at(String key, Object... values) {
    return filled(Bundles.text(language, key), values);
  }

  /** A message of the planner or the catalogue; its figures are written as here. */
  public String of(Message message) {
    String pattern = figures(text(message.key()));
    return filled(pattern, message.values().toArray());
  }

  /** A message where it has a text; not every operation has every text. */
  public Optional<String> maybe(Message message) {
    return has(key(message.key())) ? Optional.of(of(message)) : Optional.empty();
  }

  private String text(String key) {
    String known = key(key);
    return has(known) || !key.startsWith("operation.")
        ? Bundles.text(language, known)
        // an operation a practice added without words is called by its id
        : key.split("\\.")[2].replace('-', ' ');
  }

  /** What one way of doing a procedure does not say of its own holds for all. */
  private String key(String key) {
    return !key.startsWith("operation.") || has(key)
        ? key
        : key.replaceFirst("^operation\\.[^.]+\\.(?=[^.]+\\.)", "operation.");
  }

  private String filled(String pattern, Object... values) {
    if (values.length == 0 && pattern.indexOf('{') < 0 && pattern.indexOf('\'') < 0) {
      return pattern;
    }
    MessageFormat format = new MessageFormat(pattern, language.locale());
    Format[] parts = format.getFormats();
    for (int i = 0; i < parts.length; i++) {
      if (parts[i] == null) {
        format.setFormat(i, new Part(value -> written(value).toString()));
      } else if (parts[i] instanceof ChoiceFormat choice) {
        format.setFormat(i, new Part(number -> filled(choice.format(number), values)));
      }
    }
    return format.format(values);
  }

  private Object written(Object value) {
    if (value instanceof BigDecimal figure) {
      return figures(figure.toPlainString());
    }
    if (value instanceof Number number) {
      return whole(number.longValue());
    }
    if (value instanceof List<?> all) {
      return all.stream().map(one -> written(one).toString()).collect(Collectors.joining("; "));
    }
    if (value instanceof Message message) {
      // what has a name stands within a sentence here
      String text = of(message);
      return message.key().startsWith("label.") ? Labels.within(this, text) : text;
    }
    return value;
  }

  /** True where this key has a text. */
  public boolean has(String key) {
    return Bundles.has(language, key);
  }

  /** The keys of one feature, such as {@code help}. */
  public Set<String> keys(String feature) {
    return Bundles.keys(feature);
  }

  /** A whole number, grouped by thousands from 10 000 on. */
  public String whole(long number) {
    String digits = Long.toString(Math.abs(number));
    StringBuilder text = new StringBuilder(digits);
    if (digits.length() > 4) {
      for (int i = digits.length() - 3; i > 0; i -= 3) {
        text.insert(i, GAP);
      }
    }
    return (number < 0 ? "-" : "") + text;
  }

  /** Figures already written with a decimal point, with the mark people use here. */
  public String figures(String text) {
    if (!decimalComma) {
      return text;
    }
    Matcher points = POINT.matcher(text);
    return points.replaceAll(",");
  }

  /** A tooth as it is named here. */
  public String tooth(Tooth tooth) {
    return ToothNotation.write(tooth, teeth);
  }

  /** A day: 25 Nov 2026. */
  public String day(LocalDate day) {
    return DateTimeFormatter.ofPattern(Bundles.text(language, "page.date"), language.locale())
        .format(day);
  }

  /** A day of the week with its date. */
  public String weekday(LocalDate day) {
    return DateTimeFormatter.ofPattern(Bundles.text(language, "page.weekday"), language.locale())
        .format(day);
  }

  /** A time of day to the minute. */
  public String time(LocalTime time) {
    return DateTimeFormatter.ofPattern("HH:mm").format(time);
  }

  /** Day and minute of a moment, where this machine stands. */
  public String moment(Instant at) {
    var here = at.atZone(ZoneId.systemDefault());
    return day(here.toLocalDate()) + ", " + time(here.toLocalTime());
  }
}
