package kerfwright.app.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Hatch;
import kerfwright.app.drawing.Lines;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.PulpState;

/**
 * Names and thicknesses of the layers before the first stage, each at its depth.
 *
 * @param say language
 * @param scale of the stages beside it
 * @param width of the drawing
 * @param sized false where a layer is only as thick as the drawing needs it
 */
record LayerKey(Say say, StripScale scale, double width, boolean sized) {
  private static final double LINE = 18;
  private static final double SWATCH = 22;
  private static final int LETTERS = 11;

  private record Name(double at, List<String> words, String figure) {
    double high() {
      return (words.size() + (figure.isEmpty() ? 0 : 1)) * LINE + 4;
    }
  }

  String draw(String id) {
    List<Layer> layers = scale.layers();
    String named =
        layers.stream()
            .map(
                l ->
                    say.at("drawn.section-layer", Labels.material(say, l.material()), figure(l))
                        .strip())
            .collect(Collectors.joining("; "));
    List<Name> names = names(layers);
    double tall = names.stream().mapToDouble(Name::high).sum();
    double high = Math.max(scale.height(), tall + (scale.side() ? 40 : 8));
    Svg svg =
        Svg.image(
            id, width, high, say.at("drawn.key-title"), say.at("drawn.section-layers", named));
    if (scale.side()) {
      swatches(svg, layers, names);
      bar(svg, high - 10);
    } else {
      atTheirDepths(svg, names, high);
    }
    return svg.finish();
  }

  private String figure(Layer layer) {
    return sized ? Figures.mm(say, layer.thickness().typical().millimetres()) : "";
  }

  private List<Name> names(List<Layer> layers) {
    List<Name> names = new ArrayList<>();
    double depth = 0;
    for (Layer layer : layers) {
      double thick = layer.thickness().typical().millimetres();
      double from = scale.at(depth);
      double to = scale.at(depth + thick);
      depth += thick;
      names.add(
          new Name(
              (from + to) / 2,
              Lines.of(say, Labels.material(say, layer.material()), LETTERS),
              figure(layer)));
    }
    if (scale.pulp()) {
      PulpState state = scale.pulpState();
      names.add(
          new Name(
              scale.bottom() + StripScale.PULP / 2,
              Lines.of(say, say.at("drawn.section-pulp-" + state.id()), LETTERS),
              ""));
    }
    return names;
  }

  private void atTheirDepths(Svg svg, List<Name> names, double high) {
    double right = width - 1;
    double[] centres =
        Figures.spread(
            names.stream().map(Name::at).toList(),
            names.stream().map(Name::high).toList(),
            2,
            high - 2);
    svg.line(right, scale.at(0), right, scale.bottom(), Pen.THIN, "ruler");
    for (int mm = 0; mm <= scale.shownMm() + 1e-9; mm++) {
      svg.line(right - (mm % 5 == 0 ? 9 : 5), scale.at(mm), right, scale.at(mm), Pen.THIN);
    }
    for (int i = 0; i < centres.length; i++) {
      Name name = names.get(i);
      double y = centres[i];
      svg.polyline(
          List.of(
              new Svg.Point(right - 14, y),
              new Svg.Point(right - 10, y),
              new Svg.Point(right - 1, name.at())),
          Pen.THIN,
          "leader");
      words(svg, name, right - 17, y - name.high() / 2 + 16, Anchor.END);
    }
  }

  private void words(Svg svg, Name name, double x, double from, Anchor anchor) {
    double y = from;
    for (String line : name.words()) {
      svg.text(x, y, anchor, Type.LABEL, line);
      y += LINE;
    }
    if (!name.figure().isEmpty()) {
      svg.text(x, y, anchor, Type.LABEL_QUIET, name.figure());
    }
  }

  private void swatches(Svg svg, List<Layer> layers, List<Name> names) {
    double y = 2;
    for (int i = 0; i < names.size(); i++) {
      var material = layers.get(i).material();
      svg.rect(1, y, SWATCH, 2 * LINE, Hatch.ground(material), "swatch");
      String lines = Hatch.of(material).path(1, y, SWATCH, 2 * LINE, false);
      if (!lines.isEmpty()) {
        svg.path(lines, Pen.HATCH);
      }
      words(svg, names.get(i), SWATCH + 7, y + 14, Anchor.START);
      y += names.get(i).high() + 4;
    }
  }

  /** A millimetre of the stages beside it. */
  private void bar(Svg svg, double y) {
    double long1 = scale.perMm();
    svg.line(2, y - 5, 2, y + 1, Pen.INK);
    svg.line(2, y - 2, 2 + long1, y - 2, Pen.INK, "bar");
    svg.line(2 + long1, y - 5, 2 + long1, y + 1, Pen.INK);
    svg.text(2 + long1 + 7, y + 3, Anchor.START, Type.LABEL_QUIET, Figures.mm(say, 1));
  }
}
