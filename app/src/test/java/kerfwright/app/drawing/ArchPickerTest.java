package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.drawing.ArchPicker.Dentition;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.app.words.Teeth;
import kerfwright.catalogue.tooth.Tooth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

class ArchPickerTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  @ParameterizedTest
  @CsvSource({"PERMANENT, 32", "PRIMARY, 20"})
  void everyToothIsALinkWithItsNumber(Dentition dentition, int count) {
    Map<Integer, Element> teeth = teeth(dentition);
    assertEquals(count, teeth.size());
    teeth.forEach(
        (fdi, link) -> {
          new Tooth(fdi);
          assertEquals("/t/" + fdi, link.getAttribute("href"));
          assertEquals(Integer.toString(fdi), link.getTextContent().strip());
          assertTrue(link.getAttribute("aria-label").startsWith("Tooth " + fdi));
        });
  }

  @ParameterizedTest
  @CsvSource({"PERMANENT, 1, 8", "PRIMARY, 5, 5"})
  void thePatientsRightIsOnTheLeftAndTheUpperArchOnTop(Dentition d, int first, int last) {
    Map<Integer, Element> teeth = teeth(d);
    for (int position = 1; position <= last; position++) {
      Svg.Point upperRight = at(teeth, 10 * first + position);
      Svg.Point upperLeft = at(teeth, 10 * (first + 1) + position);
      Svg.Point lowerLeft = at(teeth, 10 * (first + 2) + position);
      Svg.Point lowerRight = at(teeth, 10 * (first + 3) + position);
      assertEquals(320, upperRight.x() + upperLeft.x(), 0.02);
      assertEquals(upperRight.y(), upperLeft.y(), 0.02);
      assertTrue(upperRight.x() < 160 && lowerRight.x() < 160 && lowerLeft.x() > 160);
      assertTrue(upperRight.y() < lowerRight.y());
    }
    assertTrue(at(teeth, 10 * first + 1).y() < at(teeth, 10 * first + last).y());
  }

  @ParameterizedTest
  @CsvSource({"PERMANENT", "PRIMARY"})
  void crownsDoNotOverlapByMoreThanAContact(Dentition dentition) {
    List<Element> crowns =
        teeth(dentition).values().stream()
            .map(link -> (Element) link.getElementsByTagName("path").item(0))
            .toList();
    for (int i = 0; i < crowns.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertTrue(overlap(crowns.get(i), crowns.get(j)) <= 4, "corners inside the neighbour");
      }
    }
  }

  @Test
  void theChosenToothIsMarkedForEyeAndReader() {
    String drawn = ArchPicker.draw(SAY, "p", Dentition.PERMANENT, n -> "#" + n, new Tooth(36));
    List<Element> chosen = new SvgReader(drawn).withClass("chosen");
    assertEquals(1, chosen.size());
    assertEquals("36", chosen.get(0).getAttribute("data-fdi"));
    assertEquals("true", chosen.get(0).getAttribute("aria-current"));
  }

  @Test
  void namesTeethInWords() {
    assertEquals("permanent upper right first molar", Teeth.name(SAY, new Tooth(16)));
    assertEquals("permanent lower left canine", Teeth.name(SAY, new Tooth(33)));
    assertEquals("primary lower right second molar", Teeth.name(SAY, new Tooth(85)));
  }

  private static long overlap(Element a, Element b) {
    java.awt.geom.Path2D shape = new java.awt.geom.Path2D.Double();
    List<Svg.Point> points = SvgReader.points(a);
    shape.moveTo(points.get(0).x(), points.get(0).y());
    points.forEach(p -> shape.lineTo(p.x(), p.y()));
    return SvgReader.points(b).stream().filter(p -> shape.contains(p.x(), p.y())).count();
  }

  private static Svg.Point at(Map<Integer, Element> teeth, int fdi) {
    Element text = (Element) teeth.get(fdi).getElementsByTagName("text").item(0);
    return new Svg.Point(SvgReader.number(text, "x"), SvgReader.number(text, "y"));
  }

  private static Map<Integer, Element> teeth(Dentition dentition) {
    Map<Integer, Element> teeth = new HashMap<>();
    for (Element link :
        new SvgReader(ArchPicker.draw(SAY, "p", dentition, n -> "/t/" + n, null)).all("a")) {
      teeth.put(Integer.parseInt(link.getAttribute("data-fdi")), link);
    }
    return teeth;
  }
}
