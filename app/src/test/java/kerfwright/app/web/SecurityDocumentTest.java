package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every test that docs/SECURITY.md and ARCHITECTURE.md give as evidence is there. */
class SecurityDocumentTest {
  private static final Path ROOT = root();
  private static final Pattern NAMED = Pattern.compile("`(\\w+Test)(?:\\.(\\w+))?`");

  /** A line of the table of items: which, how it stands, evidence. */
  private static final Pattern ITEM =
      Pattern.compile(
          "(?m)^\\| (?:\\*\\*)?(\\d+\\.\\d+[^|]*?)(?:\\*\\*)? \\| ([^|]+) \\| (.*) \\|$");

  /** What no test can show, with the reason. */
  private static final Set<String> NOTHING_TO_RUN =
      Set.of(
          "6.1.1 rate limits documented",
          "6.2.10 no forced change",
          "7.1.1 times documented",
          "7.1.2 sessions at once");

  private static Path root() {
    Path here = Path.of("").toAbsolutePath();
    return Files.isDirectory(here.resolve("docs")) ? here : here.getParent();
  }

  private static Map<String, String> tests() throws IOException {
    try (Stream<Path> all = Files.walk(ROOT)) {
      return all.filter(file -> file.toString().endsWith("Test.java"))
          .filter(file -> file.toString().contains("src" + file.getFileSystem().getSeparator()))
          .collect(
              Collectors.toMap(
                  file -> file.getFileName().toString().replace(".java", ""),
                  SecurityDocumentTest::text,
                  (one, other) -> one + other));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  @Test
  void everyTestThatIsNamedExists() throws IOException {
    Map<String, String> tests = tests();
    List<String> missing = new ArrayList<>();
    for (String document : List.of("docs/SECURITY.md", "ARCHITECTURE.md", "docs/network.md")) {
      Matcher named = NAMED.matcher(text(ROOT.resolve(document)));
      while (named.find()) {
        String source = tests.get(named.group(1));
        if (source == null
            || named.group(2) != null && !source.contains("void " + named.group(2) + "(")) {
          missing.add(document + ": " + named.group());
        }
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void everyItemThatIsMetNamesATest() {
    Matcher item = ITEM.matcher(text(ROOT.resolve("docs/SECURITY.md")));
    List<String> bare = new ArrayList<>();
    int items = 0;
    while (item.find()) {
      items++;
      boolean met = item.group(2).startsWith("met");
      if (met && !NAMED.matcher(item.group(3)).find() && !NOTHING_TO_RUN.contains(item.group(1))) {
        bare.add(item.group(1));
      }
    }
    assertTrue(items > 40, "items found: " + items);
    assertEquals(List.of(), bare);
  }
}
