package kerfwright.validation.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Writes docs/FITS.md when asked to, and else fails when it is not what would be written. */
class FitsDocumentTest {
  private static final String COMMAND =
      "mvn -q -Pvalidation -pl validation -am test -Dtest=FitsDocumentTest -Dfits.write=true"
          + " -Dsurefire.failIfNoSpecifiedTests=false";

  @Test
  void theDocumentSaysWhatTheFitsGiveNow() throws IOException {
    Path document = Path.of("..", "docs", "FITS.md");
    String text = FitsDocument.text(COMMAND);
    if (Boolean.getBoolean("fits.write")) {
      Files.createDirectories(document.getParent());
      Files.writeString(document, text);
      return;
    }
    String written = Files.readString(document).replace("\r\n", "\n");
    assertEquals(text, written, "docs/FITS.md is stale; run " + COMMAND);
  }

  @Test
  void aFitTakesNoValidationFinding() {
    assertThrows(IllegalArgumentException.class, () -> Calibration.one("V1a"));
    assertThrows(IllegalArgumentException.class, () -> Calibration.one("DC032"));
  }

  /** A factor put in is a factor found: the fit is the inverse of the model. */
  @Test
  void aFactorBeforeLoadingGivesTheLoadedRateBack() {
    double clean = 0.7;
    double factor = AbrasiveFit.beforeLoading(1.5, clean);
    double loading = (1 / clean - 1) * factor;
    assertEquals(1.5, factor / (1 + loading) / clean, 1e-12);
  }
}
