package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kerfwright.app.words.Say;

/** The column of names beside a section, each with a leader to what it names, none overlapping. */
final class SectionLabels {
  private record Label(double at, Type type, int strong, List<String> lines) {
    double height() {
      return lines.size() * 13.0 + 5;
    }
  }

  private static final double LEFT = 218;
  private static final int LETTERS = 16;
  private static final int STRONG_LETTERS = 15;

  private final Say say;
  private final List<Label> labels = new ArrayList<>();

  SectionLabels(Say say) {
    this.say = say;
  }

  /** The first words are set in the given type and wrapped, the rest stand below them. */
  void add(double at, Type type, String words, String... below) {
    List<String> lines = new ArrayList<>(Lines.of(say, words, STRONG_LETTERS));
    int strong = lines.size();
    for (String line : below) {
      lines.addAll(Lines.of(say, line, LETTERS));
    }
    labels.add(new Label(at, type, strong, lines));
  }

  double height() {
    return labels.stream().mapToDouble(Label::height).sum();
  }

  void draw(Svg svg, double from, double top, double floor) {
    List<Label> sorted = new ArrayList<>(labels);
    sorted.sort(Comparator.comparingDouble(Label::at));
    double[] centres =
        Figures.spread(
            sorted.stream().map(Label::at).toList(),
            sorted.stream().map(Label::height).toList(),
            top,
            floor);
    for (int i = 0; i < centres.length; i++) {
      Label label = sorted.get(i);
      svg.polyline(
          List.of(
              new Svg.Point(from, label.at()),
              new Svg.Point(from + 3, label.at()),
              new Svg.Point(LEFT - 5, centres[i]),
              new Svg.Point(LEFT - 2, centres[i])),
          Pen.THIN,
          "leader");
      double y = centres[i] - label.lines().size() * 13.0 / 2 + 10;
      for (int line = 0; line < label.lines().size(); line++) {
        svg.text(
            LEFT,
            y + 13 * line,
            Anchor.START,
            line < label.strong() || label.type() == Type.ACCENT ? label.type() : Type.PLAIN,
            label.lines().get(line));
      }
    }
  }
}
