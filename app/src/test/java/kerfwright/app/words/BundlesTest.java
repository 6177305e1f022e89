package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text there is in every language, with the same placeholders, and is used. */
class BundlesTest {
  private static final Path WORDS = Path.of("src/main/resources/kerfwright/app/words");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)");
  private static final Pattern KEY = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)+)\"");

  @Test
  void everyTextIsThereInEveryLanguage() throws IOException {
    Map<String, String> english = texts("en");
    assertTrue(english.size() > 20, "bundles not found");
    Map<String, Set<String>> missing = new TreeMap<>();
    Map<String, Set<String>> notEnglish = new TreeMap<>();
    Map<String, Set<String>> differ = new TreeMap<>();
    for (Language language : Language.values()) {
      Map<String, String> texts = texts(language.id());
      english.forEach(
          (key, text) -> {
            String said = texts.get(key);
            if (said == null) {
              add(missing, language, key);
            } else if (!placeholders(text).equals(placeholders(said))) {
              add(differ, language, key);
            }
          });
      texts.keySet().stream()
          .filter(key -> !english.containsKey(key))
          .forEach(key -> add(notEnglish, language, key));
    }
    assertEquals(Map.of(), notEnglish, "not in English");
    assertEquals(Map.of(), differ, "placeholders differ");
    assertEquals(Map.of(), missing, "missing");
  }

  private static void add(Map<String, Set<String>> all, Language language, String key) {
    all.computeIfAbsent(language.label(), one -> new TreeSet<>()).add(key);
  }

  @Test
  void everyTextCanBeFormattedAndKeepsItsApostrophes() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Language language : Language.values()) {
      texts(language.id())
          .forEach(
              (key, text) -> {
                try {
                  new MessageFormat(text, language.locale());
                } catch (IllegalArgumentException broken) {
                  wrong.add(key + ": " + broken.getMessage());
                }
                if (text.replace("''", "").replaceAll("'[{}]+'", "").contains("'")) {
                  wrong.add(key + ": a lone apostrophe is written twice");
                }
              });
    }
    assertEquals(List.of(), wrong);
  }

  /** Only what has blades is a bur; what grinds with diamond is an instrument. */
  @Test
  void onlyABladedInstrumentIsCalledABur() throws IOException {
    List<String> wrong = new ArrayList<>();
    texts("en").forEach((key, text) -> addIf(wrong, key, text, "diamond bur"));
    texts("de").forEach((key, text) -> addIf(wrong, key, text, "diamantbohrer"));
    assertEquals(List.of(), wrong);
  }

  private static void addIf(List<String> wrong, String key, String text, String words) {
    if (text.toLowerCase(Locale.ROOT).contains(words)) {
      wrong.add(key);
    }
  }

  @Test
  void everyTextIsUsedAndEveryUsedOneIsThere() throws IOException {
    String code = sources();
    Set<String> quoted =
        Pattern.compile("\"([^\"\\n]*)(?=\")")
            .matcher(code)
            .results()
            .map(one -> one.group(1))
            .collect(Collectors.toSet());
    Set<String> known = texts("en").keySet();
    Set<String> features =
        known.stream().map(key -> key.substring(0, key.indexOf('.'))).collect(Collectors.toSet());
    List<String> unused = new ArrayList<>();
    for (String key : known) {
      if (!quoted.contains(key) && !partlyBuilt(quoted, key)) {
        unused.add(key);
      }
    }
    assertEquals(List.of(), unused, "texts nobody says");
    Set<String> missing = new TreeSet<>();
    Matcher said = Pattern.compile("say\\.at\\(\\s*" + KEY.pattern() + "\\s*[,)]").matcher(code);
    while (said.find()) {
      String key = said.group(1);
      if (!known.contains(key)) {
        missing.add(key);
      }
    }
    assertEquals(Set.of(), missing, "keys without a text; features are " + features);
  }

  /** A key built from a literal that ends in a dot or hyphen, as in {@code "page.problem-" + n}. */
  private static boolean partlyBuilt(Set<String> quoted, String key) {
    for (int end = key.length() - 1; end > key.indexOf('.'); end--) {
      char last = key.charAt(end - 1);
      if ((last == '-' || last == '.') && quoted.contains(key.substring(0, end))) {
        return true;
      }
    }
    return false;
  }

  private static Set<String> placeholders(String text) {
    Matcher found = PLACEHOLDER.matcher(text);
    Set<String> all = new TreeSet<>();
    while (found.find()) {
      all.add(found.group(1));
    }
    return all;
  }

  private static String sources() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String root :
        List.of(
            "src/main/java",
            "src/main/jte",
            "../planner/src/main/java",
            "../practice/src/main/java",
            "../catalogue/src/main/java")) {
      try (Stream<Path> files = Files.walk(Path.of(root))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          all.append(Files.readString(file)).append('\n');
        }
      }
    }
    return all.toString();
  }

  private static Map<String, String> texts(String language) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(WORDS)) {
      for (Path file :
          files.filter(one -> one.toString().endsWith("_" + language + ".properties")).toList()) {
        Properties texts = new Properties();
        texts.load(new StringReader(Files.readString(file)));
        texts.stringPropertyNames().forEach(key -> all.put(key, texts.getProperty(key)));
        String feature = file.getFileName().toString().replaceFirst("_[a-z]+\\.properties$", "");
        assertTrue(
            texts.stringPropertyNames().stream().allMatch(key -> key.startsWith(feature + ".")),
            file + " holds keys of another feature");
      }
    }
    return all;
  }
}
