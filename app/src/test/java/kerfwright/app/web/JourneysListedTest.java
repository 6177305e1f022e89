package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A newcomer finds every journey in CONTRIBUTING.md, and every one named there. */
class JourneysListedTest {
  private static final Path HERE = Path.of("src/test/java/kerfwright/app/web");

  @Test
  void theListOfJourneysIsThatOfTheTaggedTests() throws Exception {
    Set<String> tagged = new TreeSet<>();
    try (var files = Files.list(HERE)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        if (name.endsWith("Test")
            && Class.forName(getClass().getPackageName() + "." + name)
                .isAnnotationPresent(Tag.class)) {
          tagged.add(name);
        }
      }
    }
    Set<String> listed = new TreeSet<>();
    Matcher names =
        Pattern.compile("`(\\w+Test)`").matcher(Files.readString(Path.of("../CONTRIBUTING.md")));
    while (names.find()) {
      listed.add(names.group(1));
    }
    assertEquals(tagged, listed);
  }
}
