package kerfwright.app.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Reads drawings back for geometry tests. */
final class SvgReader {
  private static final Pattern COMMAND = Pattern.compile("([A-Za-z])([^A-Za-z]*)");
  private static final Pattern NUMBER = Pattern.compile("-?\\d*\\.?\\d+");

  private final Document document;

  SvgReader(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + e.getMessage() + "\n" + svg, e);
    }
  }

  Element root() {
    return document.getDocumentElement();
  }

  List<Element> all(String tag) {
    List<Element> found = new ArrayList<>();
    var nodes = document.getElementsByTagName(tag);
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  List<Element> withClass(String name) {
    return all("*").stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(name))
        .toList();
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** Every point an element reaches; words by the safe estimate of their width. */
  static List<Svg.Point> points(Element e) {
    List<Svg.Point> points = new ArrayList<>();
    switch (e.getTagName()) {
      case "rect" -> {
        points.add(new Svg.Point(number(e, "x"), number(e, "y")));
        points.add(
            new Svg.Point(
                number(e, "x") + number(e, "width"), number(e, "y") + number(e, "height")));
      }
      case "circle" -> {
        double r = number(e, "r");
        points.add(new Svg.Point(number(e, "cx") - r, number(e, "cy") - r));
        points.add(new Svg.Point(number(e, "cx") + r, number(e, "cy") + r));
      }
      case "text" -> {
        double size = number(e, "font-size");
        double width =
            e.getTextContent().length() * size * (e.hasAttribute("font-weight") ? 0.6 : 0.55);
        double share =
            switch (e.getAttribute("text-anchor")) {
              case "middle" -> 0.5;
              case "end" -> 1;
              default -> 0;
            };
        double left = number(e, "x") - share * width;
        points.add(new Svg.Point(left, number(e, "y") - 0.8 * size));
        points.add(new Svg.Point(left + width, number(e, "y") + 0.2 * size));
      }
      case "path" -> points.addAll(path(e.getAttribute("d")));
      default -> {}
    }
    return points;
  }

  /** Points of a path; an arc counts with its two ends. */
  static List<Svg.Point> path(String d) {
    List<Svg.Point> points = new ArrayList<>();
    double x = 0;
    double y = 0;
    Matcher commands = COMMAND.matcher(d);
    while (commands.find()) {
      List<Double> n = new ArrayList<>();
      Matcher numbers = NUMBER.matcher(commands.group(2));
      while (numbers.find()) {
        n.add(Double.parseDouble(numbers.group()));
      }
      switch (commands.group(1)) {
        case "M", "L" -> {
          x = n.get(0);
          y = n.get(1);
        }
        case "H" -> x = n.get(0);
        case "h" -> x += n.get(0);
        case "V" -> y = n.get(0);
        case "v" -> y += n.get(0);
        case "a" -> {
          x += n.get(5);
          y += n.get(6);
        }
        case "Z" -> {}
        default -> throw new AssertionError("path command not known here: " + commands.group(1));
      }
      points.add(new Svg.Point(x, y));
    }
    return points;
  }

  static double width(Element e) {
    var xs = points(e).stream().mapToDouble(Svg.Point::x).summaryStatistics();
    return xs.getMax() - xs.getMin();
  }

  static double height(Element e) {
    var ys = points(e).stream().mapToDouble(Svg.Point::y).summaryStatistics();
    return ys.getMax() - ys.getMin();
  }
}
