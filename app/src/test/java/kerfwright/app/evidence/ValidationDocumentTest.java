package kerfwright.app.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.planner.evidence.EvidenceReport;
import org.junit.jupiter.api.Test;

/**
 * Writes docs/VALIDATION.md and the discrepancies plans are drawn with when asked to, and else
 * fails when they are not what would be written.
 */
class ValidationDocumentTest {
  private static final String COMMAND =
      "mvn -q -pl app -am test -Dtest=ValidationDocumentTest -Dvalidation.write=true"
          + " -Dsurefire.failIfNoSpecifiedTests=false";
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path DOCUMENT = ROOT.resolve("docs/VALIDATION.md");
  private static final Path DISCREPANCIES =
      ROOT.resolve("catalogue/src/main/resources/kerfwright/catalogue/" + Discrepancies.FILE);
  private static final Pattern TEST = Pattern.compile("(?m)^  void (\\w+)\\(");

  @Test
  void theDocumentSaysWhatTheModelsComputeNow() throws IOException {
    EvidenceReport report = EvidenceReport.compute();
    String document = EvidenceDocument.of(report, COMMAND, otherChecks());
    if (Boolean.getBoolean("validation.write")) {
      Files.createDirectories(DOCUMENT.getParent());
      Files.writeString(DOCUMENT, document);
      Files.writeString(DISCREPANCIES, report.discrepancies().csv());
      return;
    }
    assertEquals(
        report.discrepancies().csv(),
        Discrepancies.packaged().csv(),
        DISCREPANCIES + " is stale; make it with " + COMMAND);
    assertTrue(Files.exists(DOCUMENT), DOCUMENT + " is missing; make it with " + COMMAND);
    List<String> written = Files.readString(DOCUMENT).lines().toList();
    List<String> now = document.lines().toList();
    for (int i = 0; i < Math.min(written.size(), now.size()); i++) {
      assertEquals(now.get(i), written.get(i), "line " + (i + 1) + " is stale; run " + COMMAND);
    }
    assertEquals(now.size(), written.size(), "the document is stale; run " + COMMAND);
  }

  /** How often the models alone take what the trade allows, as counted by its own document. */
  private static String freeChoice() throws IOException {
    return Files.readString(ROOT.resolve("docs/FREE-CHOICE.md"))
        .lines()
        .filter(line -> line.startsWith("Of "))
        .findFirst()
        .orElseThrow();
  }

  /** Closed forms, reference curves and laws are checked by tests; their names say what. */
  private static String otherChecks() throws IOException {
    StringBuilder md = new StringBuilder("\n## The models left free\n\n");
    md.append(freeChoice()).append(" [One by one](FREE-CHOICE.md).\n");
    md.append("\n## Checks against closed forms and laws\n\n");
    md.append("Tests of the physics module. Names that begin with a1 to a11 follow the closed");
    md.append(" forms of Carslaw and Jaeger, 2nd ed. 1959, and of Incropera and DeWitt.\n\n");
    md.append("| class | tests |\n|---|---|\n");
    Path tests = ROOT.resolve("physics/src/test/java");
    if (!Files.isDirectory(tests)) {
      return md.append("| - | none in this tree |\n").toString();
    }
    try (Stream<Path> files = Files.walk(tests)) {
      for (Path file : files.filter(f -> f.toString().endsWith("Test.java")).sorted().toList()) {
        String names = names(Files.readString(file));
        if (!names.isEmpty()) {
          String name = tests.relativize(file).toString().replace(".java", "");
          md.append("| ").append(name.replace("kerfwright/physics/", "").replace('\\', '/'));
          md.append(" | ").append(names).append(" |\n");
        }
      }
    }
    return md.toString();
  }

  private static String names(String source) {
    StringBuilder names = new StringBuilder();
    Matcher test = TEST.matcher(source);
    while (test.find()) {
      names.append(names.isEmpty() ? "" : "; ").append(words(test.group(1)));
    }
    return names.toString();
  }

  private static String words(String name) {
    return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", " ")
        .toLowerCase(Locale.ROOT);
  }
}
