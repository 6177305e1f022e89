package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class EveryDrawingTest {
  static Stream<Map.Entry<String, String>> samples() {
    return Stream.of(Language.values())
        .flatMap(
            language ->
                DrawingSamples.in(Say.in(language)).entrySet().stream()
                    .map(one -> Map.entry(one.getKey() + " " + language.id(), one.getValue())));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("samples")
  void isNamedAndDescribedForThoseWhoDoNotSeeIt(Map.Entry<String, String> sample) {
    SvgReader svg = new SvgReader(sample.getValue());
    String id = svg.root().getAttribute("id");
    assertEquals(id + "-title " + id + "-desc", svg.root().getAttribute("aria-labelledby"));
    String role = sample.getKey().startsWith("arch") ? "group" : "img";
    assertEquals(role, svg.root().getAttribute("role"));
    assertEquals(id + "-title", svg.all("title").get(0).getAttribute("id"));
    assertEquals(id + "-desc", svg.all("desc").get(0).getAttribute("id"));
    assertTrue(svg.root().getAttribute("height").matches("\\d+"), "print takes whole numbers");
    assertTrue(svg.all("title").get(0).getTextContent().length() > 10);
    assertTrue(svg.all("desc").get(0).getTextContent().length() > 20);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("samples")
  void keepsEverythingInsideItsViewBox(Map.Entry<String, String> sample) {
    SvgReader svg = new SvgReader(sample.getValue());
    String[] box = svg.root().getAttribute("viewBox").split(" ");
    double width = Double.parseDouble(box[2]);
    double height = Double.parseDouble(box[3]);
    for (Element e : svg.all("*")) {
      for (Svg.Point p : SvgReader.points(e)) {
        boolean inside =
            p.x() >= -0.01 && p.x() <= width + 0.01 && p.y() >= -0.01 && p.y() <= height + 0.01;
        assertTrue(
            inside,
            sample.getKey()
                + ": "
                + e.getTagName()
                + " '"
                + e.getTextContent()
                + "' "
                + e.getAttribute("class")
                + " reaches "
                + p
                + " of "
                + width
                + " x "
                + height);
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("samples")
  void carriesNoInlineStyleAndPaintsEveryShapeItself(Map.Entry<String, String> sample) {
    SvgReader svg = new SvgReader(sample.getValue());
    assertFalse(sample.getValue().contains("style"));
    assertFalse(sample.getValue().contains("NaN"));
    Set<String> ids = new HashSet<>();
    for (Element e : svg.all("*")) {
      if (Set.of("rect", "circle", "path", "text").contains(e.getTagName())) {
        assertTrue(
            e.hasAttribute("fill") && e.getAttribute("class").startsWith("d-"), e.getTagName());
      }
      assertTrue(!e.hasAttribute("id") || ids.add(e.getAttribute("id")), "id twice");
    }
  }

  @Test
  void escapesWhatAUserTyped() {
    String svg =
        Svg.image("x", 10, 10, "<script>&\"\u0000", "a \uD800 b")
            .text(1, 1, Anchor.START, Type.PLAIN, "</text><b>")
            .open("a", "href", "?a=\"&b")
            .close("a")
            .finish();
    SvgReader read = new SvgReader(svg);
    assertEquals("<script>&\"?", read.all("title").get(0).getTextContent());
    assertEquals("</text><b>", read.all("text").get(0).getTextContent());
    assertEquals("?a=\"&b", read.all("a").get(0).getAttribute("href"));
    assertThrows(IllegalArgumentException.class, () -> Svg.image("a b", 1, 1, "t", "d"));
  }

  @Test
  void writesNumbersShortAndNeverMinusZero() {
    assertEquals("0", Svg.number(-0.001));
    assertEquals("1.5", Svg.number(1.500));
    assertEquals("-2", Svg.number(-2));
    assertEquals("100", Svg.number(100));
    assertThrows(IllegalArgumentException.class, () -> Svg.number(Double.NaN));
  }
}
