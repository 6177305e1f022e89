package kerfwright.app.form;

import io.javalin.http.Context;
import java.text.Normalizer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.security.Signed;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.setting.Person;
import org.jspecify.annotations.Nullable;

/** What a form sent, as values; whatever is none of them is left out. */
public final class Sent {
  private static final String WHO = "who";
  private static final Duration A_WORKING_DAY = Duration.ofHours(12);

  private Sent() {}

  public static String text(Context call, String name) {
    String value = call.formParam(name);
    return value == null ? "" : composed(value).strip();
  }

  /** Some keyboards send a letter and its mark as two characters: Unicode's form C joins them. */
  private static String composed(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC);
  }

  public static Optional<UUID> id(@Nullable String text) {
    if (text == null || !text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) {
      return Optional.empty();
    }
    return Optional.of(UUID.fromString(text));
  }

  /** A whole number of at most four digits; empty where it is none. */
  public static Optional<Integer> whole(@Nullable String text) {
    return text != null && text.strip().matches("\\d{1,4}")
        ? Optional.of(Integer.valueOf(text.strip()))
        : Optional.empty();
  }

  public static int version(Context call) {
    String text = text(call, "version");
    return text.matches("\\d{1,9}") ? Integer.parseInt(text) : -1;
  }

  /** Items with the version they were seen at, as id and version with a colon between. */
  public static List<Pick> picks(Context call) {
    List<Pick> picks = new ArrayList<>();
    for (String one : call.formParams("pick")) {
      int colon = one.indexOf(':');
      if (colon > 0 && one.substring(colon + 1).matches("\\d{1,9}")) {
        id(one.substring(0, colon))
            .ifPresent(
                item -> picks.add(new Pick(item, Integer.parseInt(one.substring(colon + 1)))));
      }
    }
    return picks;
  }

  /**
   * Who does it: whoever is signed in, whatever the form says. Where nobody signs in, the form; the
   * device offers the same person next time, for a working day.
   */
  public static String by(Context call) {
    return by(call, "by");
  }

  /** The same for a form that calls the field otherwise. */
  public static String by(Context call, String name) {
    Optional<String> signed = Signed.initials(call);
    String by = signed.orElseGet(() -> text(call, name));
    if (signed.isEmpty() && by.matches("[\\p{Lu}\\p{N}]{1,4}")) {
      Remembered.keep(call, WHO, by, A_WORKING_DAY);
    }
    return by;
  }

  /** Who did something here last, empty where nobody did; whoever is signed in. */
  public static String lastBy(Context call) {
    return Signed.initials(call).orElseGet(() -> Remembered.of(call, WHO));
  }

  /** Whom a form offers: whoever is signed in alone, else all. */
  public static List<Person> people(Context call, List<Person> all) {
    return Signed.initials(call)
        .map(by -> all.stream().filter(one -> one.initials().equals(by)).toList())
        .orElse(all);
  }
}
