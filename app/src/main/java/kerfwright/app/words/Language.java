package kerfwright.app.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A language of the texts. One that is not complete yet is shown, and each text it lacks in
 * English; BundlesTest names them.
 */
public enum Language {
  ENGLISH("en", "English", false, false),
  GERMAN("de", "Deutsch", true, true);

  private final String id;
  private final String label;
  private final boolean decimalComma;
  private final boolean capitalNouns;

  Language(String id, String label, boolean decimalComma, boolean capitalNouns) {
    this.id = id;
    this.label = label;
    this.decimalComma = decimalComma;
    this.capitalNouns = capitalNouns;
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

  /** True where a noun begins with a capital within a sentence too. */
  boolean capitalNouns() {
    return capitalNouns;
  }

  Locale locale() {
    return Locale.forLanguageTag(id);
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(Language::id).toList();
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
