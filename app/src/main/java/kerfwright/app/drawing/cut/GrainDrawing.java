package kerfwright.app.drawing.cut;

import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Hatch;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.GrainMark;
import kerfwright.quantity.Identified;

/**
 * One grain in section to scale: its tip is the cone the model's load law means, its depth, the
 * section of its groove, the depth of the cracks and the section they take away are the model's.
 * The body of the grain, the outline of a crack and of what is pushed aside are drawn for clarity,
 * with the computed area.
 */
public final class GrainDrawing {
  /** What is seen. */
  public enum Phase implements Identified {
    TOUCHES,
    PRESSED,
    CRACKED,
    CHIPPED,
    DRAGGED
  }

  private static final double WIDTH = 600;
  private static final double HEIGHT = 420;
  private static final double SURFACE = 170;
  private static final double MIDDLE = 300;
  private static final double SHOULDER = 92;
  private static final double BAR = 95;

  private final Svg svg;
  private final Say say;
  private final GrainMark mark;
  private final double perUm;
  private final double slope = Math.tan(GrainMark.tipHalfAngleRad());

  private GrainDrawing(Say say, Svg svg, GrainMark mark, double perUm) {
    this.say = say;
    this.svg = svg;
    this.mark = mark;
    this.perUm = perUm;
  }

  /** Width of the part of the layer that is seen, so that every figure of the mark fits. */
  public static double windowUm(GrainMark deepest) {
    double fromCrack = 1e6 * Math.max(3.2 * deepest.crackDepthM(), 2.8 * halfCrackM(deepest));
    return Math.max(1e6 * 12 * deepest.depthM(), fromCrack);
  }

  /** Half the width of the dish a crack lifts: a parabola of the computed depth and section. */
  public static double halfCrackM(GrainMark mark) {
    return mark.cracks() ? 0.75 * mark.crackedM2() / mark.crackDepthM() : 0;
  }

  public static String draw(
      Say say, String id, Material layer, GrainMark mark, double windowUm, Phase phase) {
    String about = "drawn.grain-" + phase.id();
    Svg svg = Svg.image(id, WIDTH, HEIGHT, say.at("drawn.grain-title"), say.at(about));
    GrainDrawing drawing = new GrainDrawing(say, svg, mark, WIDTH / windowUm);
    drawing.layer(layer);
    switch (phase) {
      case TOUCHES -> drawing.grain(0, "a-press");
      case PRESSED -> {
        drawing.grain(drawing.um(mark.depthM()), "a-press");
        drawing.depth();
      }
      case CRACKED -> {
        drawing.grain(drawing.um(mark.depthM()), "");
        drawing.crack(0.6);
        drawing.crackDepth();
      }
      case CHIPPED -> {
        drawing.dish();
        drawing.grain(-56, "a-lift");
      }
      case DRAGGED -> drawing.groove();
    }
    drawing.bar();
    return svg.finish();
  }

  private double um(double metres) {
    return 1e6 * metres * perUm;
  }

  private void layer(Material layer) {
    svg.rect(0, SURFACE, WIDTH, HEIGHT - SURFACE, Hatch.ground(layer), "layer");
    String hatch = Hatch.of(layer).path(0, SURFACE, WIDTH, HEIGHT - SURFACE, false);
    svg.path(hatch, Pen.HATCH);
  }

  /** Its tip a depth below the surface; the tip is a cone up to its shoulders. */
  private void grain(double depth, String motion) {
    double tip = SURFACE + depth;
    double wide = SHOULDER * slope;
    svg.open("g", "class", motion);
    svg.polygon(
        List.of(
            new Svg.Point(MIDDLE, tip),
            new Svg.Point(MIDDLE + wide, tip - SHOULDER),
            new Svg.Point(MIDDLE + wide * 0.86, Math.max(0, tip - SHOULDER - 120)),
            new Svg.Point(MIDDLE - wide * 0.86, Math.max(0, tip - SHOULDER - 120)),
            new Svg.Point(MIDDLE - wide, tip - SHOULDER)),
        Pen.BODY,
        "grain");
    svg.close("g");
  }

  private void depth() {
    double y = SURFACE + um(mark.depthM());
    svg.line(MIDDLE + 18, y, 592, y, Pen.ACCENT_GUIDE, "depth");
    svg.text(592, SURFACE - 14, Anchor.END, Type.LECTURE_ACCENT, figure(mark.depthM()));
  }

  private void crackDepth() {
    double y = SURFACE + um(mark.crackDepthM());
    svg.line(0, y, WIDTH, y, Pen.ACCENT_GUIDE, "crack-depth");
    svg.text(592, SURFACE - 14, Anchor.END, Type.LECTURE_ACCENT, figure(mark.crackDepthM()));
  }

  private String figure(double metres) {
    return say.at("drawn.um", TwoDigits.of(say, metres * 1e6));
  }

  /** A crack from the floor of the plastic zone towards the surface, so far as a share tells. */
  private void crack(double share) {
    double half = um(halfCrackM(mark)) * share;
    double deep = um(mark.crackDepthM());
    for (int side : new int[] {-1, 1}) {
      String d =
          Svg.move(new Svg.Point(MIDDLE, SURFACE + deep))
              + "Q"
              + Svg.number(MIDDLE + side * half / 2)
              + " "
              + Svg.number(SURFACE + deep)
              + " "
              + Svg.number(MIDDLE + side * half)
              + " "
              + Svg.number(SURFACE + deep * (1 - share * share));
      svg.open(
          "path",
          "d",
          d,
          "pathLength",
          "1",
          "class",
          "d-accent a-draw",
          "fill",
          "none",
          "stroke",
          "#7a2459",
          "stroke-width",
          "3");
      svg.close("path");
    }
  }

  /** The dish that came out, and the two halves of it beside the grain. */
  private void dish() {
    double half = um(halfCrackM(mark));
    double deep = um(mark.crackDepthM());
    svg.path(parabola(MIDDLE, SURFACE, half, deep), Pen.PAPER, "dish");
    svg.path(parabola(MIDDLE, SURFACE, half, deep), Pen.ACCENT, "dish-edge");
    svg.open("g", "class", "a-fly");
    svg.path(parabola(MIDDLE, SURFACE - 40, half, deep), Pen.LAYER, "chip");
    svg.close("g");
  }

  /** Closed: flat on top, a parabola below. */
  private static String parabola(double x, double y, double half, double deep) {
    return Svg.move(new Svg.Point(x - half, y))
        + "Q"
        + Svg.number(x)
        + " "
        + Svg.number(y + 2 * deep)
        + " "
        + Svg.number(x + half)
        + " "
        + Svg.number(y)
        + "Z";
  }

  /** The groove behind the grain, what was pushed aside and, above it, what was lifted. */
  private void groove() {
    double deep = um(mark.depthM());
    double half = deep * slope;
    svg.polygon(
        List.of(
            new Svg.Point(MIDDLE - half, SURFACE),
            new Svg.Point(MIDDLE, SURFACE + deep),
            new Svg.Point(MIDDLE + half, SURFACE)),
        Pen.PAPER,
        "groove");
    double area = mark.grooveM2() * 1e12 * perUm * perUm;
    double ridge = Math.sqrt((1 - mark.chipShare()) * area / 2);
    svg.open("g", "class", "a-rise");
    for (int side : new int[] {-1, 1}) {
      double x = MIDDLE + side * (half + ridge);
      svg.polygon(
          List.of(
              new Svg.Point(x - ridge, SURFACE),
              new Svg.Point(x, SURFACE - ridge),
              new Svg.Point(x + ridge, SURFACE)),
          Pen.ACCENT_FILL,
          "ridge");
    }
    svg.close("g");
    double chip = Math.sqrt(mark.chipShare() * area);
    svg.open("g", "class", "a-fly");
    svg.rect(MIDDLE - chip / 2, SURFACE - 70 - chip, chip, chip, Pen.BODY, "chip");
    svg.close("g");
    depth();
  }

  private void bar() {
    double um = Figures.tick(perUm, BAR / 2.6);
    double length = um * perUm;
    svg.line(10, 46, 10 + length, 46, Pen.INK, "scale");
    svg.line(10, 40, 10, 52, Pen.INK);
    svg.line(10 + length, 40, 10 + length, 52, Pen.INK);
    svg.text(10, 30, Anchor.START, Type.LECTURE_QUIET, say.at("drawn.um", TwoDigits.of(say, um)));
  }
}
