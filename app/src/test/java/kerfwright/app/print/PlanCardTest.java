package kerfwright.app.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kerfwright.app.EnglishWords;
import kerfwright.app.Thorough;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseReader;
import kerfwright.app.input.SourceText;
import kerfwright.app.input.TreeReader;
import kerfwright.app.plan.APlan;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.quantity.Finding;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanCardTest {
  private static final byte[] CARD = PlanCard.pdf(Say.in(Language.ENGLISH), APlan.throughACrown());

  @Test
  void theCardIsA5AndSaysWhatIsNeeded() throws IOException {
    Files.createDirectories(Path.of("target"));
    Files.write(Path.of("target/card.pdf"), CARD);
    try (PDDocument document = Loader.loadPDF(CARD)) {
      float width = document.getPage(0).getMediaBox().getWidth() / 72 * 25.4f;
      float height = document.getPage(0).getMediaBox().getHeight() / 72 * 25.4f;
      assertEquals(148, width, 0.5);
      assertEquals(210, height, 0.5);
      String text = new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
      for (String needed :
          new String[] {
            "Tooth 16: access cavity",
            "K-0412",
            "D1",
            "B1",
            "against rotation",
            "50 mL/min",
            "The grating of enamel gives way to a smoother, quieter cut",
            "Standing cautions",
            "planning aid only"
          }) {
        assertTrue(text.contains(needed), needed + " in " + text);
      }
      assertFalse(text.contains("#"), "a sign without a glyph is shown as #");
    }
  }

  @Test
  void everyStandingCautionIsOnTheCardInAFewWords() throws IOException {
    Say say = Say.in(Language.ENGLISH);
    try (PDDocument document = Loader.loadPDF(CARD)) {
      String text = new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
      for (Finding caution : APlan.throughACrown().cautions()) {
        String words = say.at("plan.short-" + caution.code());
        assertTrue(text.contains(words), words + " in " + text);
      }
    }
  }

  static List<String> examples() {
    return Thorough.examples().stream().map(file -> file.getFileName().toString()).toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsOneSideWithEveryEndCue(String name) throws Exception {
    Wiring wiring = Wiring.production();
    SourceText text = SourceText.of(Path.of("../examples", name));
    CutCase cutCase = new CaseReader(wiring.cases()).read(TreeReader.yaml(text), "case");
    CutPlan plan = wiring.plans().plan(cutCase, wiring.demoDrawer().read(), new PlanOptions(8, 1));
    if (plan.refused()) {
      return;
    }
    for (Language language : Language.values()) {
      Say say = Say.in(language);
      try (PDDocument document = Loader.loadPDF(PlanCard.pdf(say, plan))) {
        assertEquals(1, document.getNumberOfPages(), name + " " + language);
        String all = new PDFTextStripper().getText(document).replaceAll("\\s+", "");
        for (Branch branch : plan.branches()) {
          for (String id : Words.byInstrument(say, branch.plan()).keySet()) {
            assertTrue(all.contains(id), name + ": " + id + " for " + branch.restoration());
          }
        }
        for (PlannedStep step : plan.steps()) {
          String cue = Words.doneWhen(say, step).replaceAll("\\s+", "");
          assertTrue(all.contains(cue), cue + " in " + all);
        }
      }
    }
  }

  @Test
  void theGermanCardIsGermanThroughout() throws IOException {
    Say german = Say.in(Language.GERMAN);
    byte[] card = PlanCard.pdf(german, APlan.throughACrown());
    Files.write(Path.of("target/card-de.pdf"), card);
    try (PDDocument document = Loader.loadPDF(card)) {
      String text = new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
      for (String needed :
          new String[] {
            "Zahn 16: Zugangskavit\u00e4t",
            "Am Stuhl",
            "gegen die Drehrichtung",
            german.at("plan.always-mind")
          }) {
        assertTrue(text.contains(needed), needed + " in " + text);
      }
      assertEquals(List.of(), EnglishWords.in(text));
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    int fonts = 0;
    try (PDDocument document = Loader.loadPDF(CARD)) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
          fonts++;
        }
      }
    }
    assertTrue(fonts > 0);
  }
}
