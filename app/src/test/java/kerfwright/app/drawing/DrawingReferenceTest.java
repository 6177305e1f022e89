package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Drawings are compared with reference files that a person has looked at. After an intended change
 * run this test with {@code -Ddrawings.write=src/test/resources/kerfwright/app/drawing}, look at
 * every picture that changed, and commit the files. {@code -Ddrawings.all=true} with another folder
 * writes all samples for looking at, {@code -Ddrawings.language=de} in another language.
 */
@Tag("pinned")
class DrawingReferenceTest {
  private static final List<String> KEPT =
      List.of(
          "abrasive-534",
          "arch-permanent",
          "arch-primary",
          "blades-6",
          "blades-30",
          "heat-rising",
          "heat-below-zero",
          "instrument-bur-pear",
          "instrument-diamond-taper",
          "instrument-diamond-round",
          "instrument-small-flame",
          "strip-metal-ceramic-3",
          "strip-metal-ceramic-key",
          "strip-clean-up-1",
          "stroke-against-rotation-opening",
          "stroke-with-rotation-outside");

  @Test
  void drawingsEqualTheirReferenceFiles() throws IOException {
    Language language = Language.byId(System.getProperty("drawings.language", "en")).orElseThrow();
    Map<String, String> samples = DrawingSamples.in(Say.in(language));
    String folder = System.getProperty("drawings.write");
    if (folder != null) {
      write(Path.of(folder), samples);
      return;
    }
    for (String name : KEPT) {
      assertEquals(reference(name), normal(samples.get(name)), name);
    }
  }

  private static void write(Path folder, Map<String, String> samples) throws IOException {
    Files.createDirectories(folder);
    boolean all = Boolean.getBoolean("drawings.all");
    for (Map.Entry<String, String> sample : samples.entrySet()) {
      if (all || KEPT.contains(sample.getKey())) {
        Files.writeString(folder.resolve(sample.getKey() + ".svg"), sample.getValue());
      }
    }
  }

  private static String reference(String name) throws IOException {
    try (var in = DrawingReferenceTest.class.getResourceAsStream(name + ".svg")) {
      assertTrue(in != null, "no reference file " + name + ".svg");
      return normal(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  /** Line ends are the only thing a checkout may change. */
  private static String normal(String svg) {
    return svg.replace("\r\n", "\n").strip();
  }
}
