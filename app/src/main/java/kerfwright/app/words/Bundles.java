package kerfwright.app.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/** The message bundles, each read when it is first asked for. */
final class Bundles {
  private static final Map<String, Map<String, String>> READ = new ConcurrentHashMap<>();

  private Bundles() {}

  static String text(Language language, String key) {
    String text = bundle(language, key).get(key);
    if (text == null) {
      throw new IllegalStateException("No text in " + language + " for " + key);
    }
    return text;
  }

  static boolean has(Language language, String key) {
    return bundle(language, key).containsKey(key);
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
