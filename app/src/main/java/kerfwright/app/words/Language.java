package kerfwright.app.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language the texts are complete in. */
public enum Language {
  ENGLISH("en", "English", false),
  GERMAN("de", "Deutsch", true);

  private final String id;
  private final String label;
  private final boolean decimalComma;

  Language(String id, String label, boolean decimalComma) {
    this.id = id;
    this.label = label;
    this.decimalComma = decimalComma;
  }

  /** ISO 639-1 code. */
  public String id() {
    return id;
  }

  /** Its own name. */
  public String label() {
    return label;
  }

  boolean decimalComma() {
    return decimalComma;
  }

  Locale locale() {
    return Locale.forLanguageTag(id);
  }

  public static Optional<Language> byId(String id) {
    return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
  }

  /** The first of these preferences there is; English where there is none. */
  public static Language preferred(String acceptLanguage) {
    try {
      Locale best =
          Locale.lookup(
              Locale.LanguageRange.parse(acceptLanguage),
              Arrays.stream(values()).map(Language::locale).toList());
      return best == null ? ENGLISH : byId(best.getLanguage()).orElse(ENGLISH);
    } catch (IllegalArgumentException unreadable) {
      return ENGLISH;
    }
  }
}
