package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kerfwright.app.EnglishWords;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.plan.CutPlan;
import org.junit.jupiter.api.Test;

/** Every example, planned or refused, reads as German with no English left in it. */
class GermanPlansTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Say GERMAN = Say.in(Language.GERMAN);

  @Test
  void noEnglishIsLeftInAGermanPlan() throws Exception {
    Wiring wiring = Wiring.production();
    List<String> left = new ArrayList<>();
    int planned = 0;
    for (Path example : examples()) {
      CutPlan plan =
          wiring
              .plans()
              .plan(
                  new CaseFile(wiring.cases()).read(example),
                  wiring.demoDrawer().read(),
                  new PlanOptions(2, 1));
      planned += plan.refused() ? 0 : 1;
      // keys of sources and codes of findings are the same in every language
      String text = PlanText.of(GERMAN, plan);
      String words = text.replaceAll("\\[[a-z0-9;, -]*\\]|\\([a-z]+(-[a-z]+)+\\)", "");
      EnglishWords.in(words).forEach(found -> left.add(example.getFileName() + ": " + found));
    }
    assertTrue(planned > 10, "planned " + planned);
    assertEquals(List.of(), left);
  }

  private static List<Path> examples() throws Exception {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .filter(file -> !file.getFileName().toString().startsWith("day-"))
          .sorted()
          .toList();
    }
  }
}
