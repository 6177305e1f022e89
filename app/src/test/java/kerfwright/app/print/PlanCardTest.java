package kerfwright.app.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kerfwright.app.EnglishWords;
import kerfwright.app.Wiring;
import kerfwright.app.plan.APlan;
import kerfwright.app.plan.CardReasons;
import kerfwright.app.plan.ScaleDrawings;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;
import kerfwright.quantity.Finding;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlanCardTest {
  private static final byte[] CARD =
      PlanCard.pdf(Say.in(Language.ENGLISH), APlan.throughACrown(), new ScaleDrawings());

  @Test
  void theCardIsA5AndSaysWhatIsNeeded() throws IOException {
    Files.createDirectories(Path.of("target"));
    Files.write(Path.of("target/card.pdf"), CARD);
    try (PDDocument document = Loader.loadPDF(CARD)) {
      float width = document.getPage(0).getMediaBox().getWidth() / 72 * 25.4f;
      float height = document.getPage(0).getMediaBox().getHeight() / 72 * 25.4f;
      assertEquals(148, width, 0.5);
      assertEquals(210, height, 0.5);
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      for (String needed :
          new String[] {
            "Tooth 16: access cavity",
            "K-0412",
            "D1",
            "B1",
            "against rotation",
            "50 mL/min",
            "The grating of enamel turns into a smoother, quieter bite",
            "Standing cautions",
            "Planning aid only.",
            "page 1 of"
          }) {
        assertTrue(text.contains(needed), needed + " in " + text);
      }
      assertFalse(text.contains("#"), "a sign without a glyph is shown as #");
    }
  }

  @Test
  void everyCautionIsOnTheCardWithWhatSpeaksAgainstThePlan() throws IOException {
    Say say = Say.in(Language.ENGLISH);
    try (PDDocument document = Loader.loadPDF(CARD)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      for (Finding caution : APlan.throughACrown().cautions()) {
        assertTrue(text.contains(say.of(caution.message())), say.of(caution.message()));
      }
      for (String against : CardReasons.opposing(say, APlan.throughACrown()).keySet()) {
        assertTrue(text.contains(against), against + " in " + text);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void anOrdinaryCaseHasWhatToDoInFrontAndTheCautionsBehind(Language language) throws Exception {
    Say say = Say.in(language);
    Wiring wiring = Wiring.production();
    for (CutCase cutCase : wiring.demoCases().read()) {
      CutPlan plan =
          wiring.plans().plan(cutCase, wiring.demoDrawer().read(), new PlanOptions(64, 1));
      byte[] card = PlanCard.pdf(say, plan, new ScaleDrawings());
      try (PDDocument document = Loader.loadPDF(card)) {
        // a whole access has eight operations or more
        assertTrue(document.getNumberOfPages() <= 4, cutCase.reference());
        PDFTextStripper back = new PDFTextStripper();
        back.setStartPage(2);
        String behind = back.getText(document);
        assertTrue(behind.contains(say.at("plan.always-mind")), behind);
      }
    }
  }

  @Test
  void theGermanCardIsGermanThroughout() throws IOException {
    Say german = Say.in(Language.GERMAN);
    byte[] card = PlanCard.pdf(german, APlan.throughACrown(), new ScaleDrawings());
    Files.write(Path.of("target/card-de.pdf"), card);
    try (PDDocument document = Loader.loadPDF(card)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      for (String needed :
          new String[] {
            "Zahn 16: Zugangskavit\u00e4t",
            "am Stuhl",
            "gegen die Drehrichtung",
            "Fertig, wenn:",
            german.at("plan.always-mind"),
            "Seite 1 von"
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
