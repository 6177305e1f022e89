package kerfwright.app.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The message bundles, each read when it is first asked for.
 *
 * <p>A text of an operation, {@code operation.<variant>.<id>.<text>}, that its variant does not
 * have is that of {@code operation.<id>.<text>}.
 */
final class Bundles {
  private static final Map<String, Map<String, String>> READ = new ConcurrentHashMap<>();
  private static final Map<String, String> ADDED = new ConcurrentHashMap<>();

  private static final Pattern OF_A_VARIANT =
      Pattern.compile("(operation\\.)[^.]+\\.([^.]+\\.[^.]+)");

  private static final Set<String> LACKING = ConcurrentHashMap.newKeySet();

  private static final Logger LOG = LoggerFactory.getLogger(Bundles.class);

  private Bundles() {}

  static String text(Language language, String key) {
    String text = found(language, key);
    if (text == null && language != Language.ENGLISH) {
      if (LACKING.add(language.id() + " " + key)) {
        LOG.warn("No text in {} for {}: the English one is shown", language, key);
      }
      text = found(Language.ENGLISH, key);
    }
    if (text == null) {
      throw new IllegalStateException("No text for " + key);
    }
    return text;
  }

  static boolean has(Language language, String key) {
    return found(language, key) != null || found(Language.ENGLISH, key) != null;
  }

  /** The keys of one feature, whatever language has them. */
  static Set<String> keys(String feature) {
    return bundle(Language.ENGLISH, feature + ".").keySet();
  }

  /** Texts of a folder outside the program, which stand before the packaged ones. */
  static void also(Language language, Map<String, String> texts) {
    texts.forEach((key, text) -> ADDED.put(language.id() + " " + key, text));
  }

  /**
   * What is said of one variant alone is never replaced by what is said of all, only by English.
   */
  private static @Nullable String found(Language language, String key) {
    String text = itself(language, key);
    Matcher variant = OF_A_VARIANT.matcher(key);
    return text == null && itself(Language.ENGLISH, key) == null && variant.matches()
        ? found(language, variant.group(1) + variant.group(2))
        : text;
  }

  private static @Nullable String itself(Language language, String key) {
    String added = ADDED.get(language.id() + " " + key);
    return added == null ? bundle(language, key).get(key) : added;
  }

  private static Map<String, String> bundle(Language language, String key) {
    int dot = key.indexOf('.');
    if (dot < 1) {
      throw new IllegalStateException("Not a key of a text: " + key);
    }
    String name = key.substring(0, dot) + "_" + language.id() + ".properties";
    return READ.computeIfAbsent(name, Bundles::read);
  }

  private static Map<String, String> read(String name) {
    try (InputStream in = Bundles.class.getResourceAsStream(name)) {
      if (in == null) {
        return Map.of();
      }
      Properties texts = new Properties();
      texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      Map<String, String> bundle = new HashMap<>();
      texts.stringPropertyNames().forEach(key -> bundle.put(key, texts.getProperty(key)));
      return Map.copyOf(bundle);
    } catch (IOException unreadable) {
      throw new IllegalStateException(name, unreadable);
    }
  }
}
