package kerfwright.app.drawing.instrument;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.RingColour;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;

/**
 * A patch of an abrasive surface to scale: grains of the size of the grit class, the patch and its
 * magnification the same for every class. Where the grains lie is drawn by lot from a seed; the
 * share of the surface they cover is a project setting with no source.
 */
public final class AbrasiveSurface {
  static final double PATCH_WIDTH_MM = 1.0;
  static final double PATCH_HEIGHT_MM = 0.5;

  /** Drawing units a millimetre. */
  public static final double PER_MM = 296;

  /** Drawn size under which a grain has no facet and fewer corners. */
  private static final double SMALL = 6;

  private static final double COVERED = 0.25;
  private static final double LEFT = 12;
  private static final double TOP = 12;

  private record Grain(double x, double y, double size, List<Svg.Point> corners) {
    /** Area, mm2, by the shoelace formula. */
    double area() {
      double twice = 0;
      for (int i = 0; i < corners.size(); i++) {
        Svg.Point a = corners.get(i);
        Svg.Point b = corners.get((i + 1) % corners.size());
        twice += a.x() * b.y() - b.x() * a.y();
      }
      return Math.abs(twice) / 2;
    }
  }

  private record Lot(GritClass grit, long seed) {}

  /** What is drawn of a lot, whatever the language. */
  private record Patch(long coverPercent, String grains, String facets) {}

  /** A few seeds are ever used: one a drawing, one a reference page. */
  private static final Map<Lot, Patch> PATCHES = new ConcurrentHashMap<>();

  private AbrasiveSurface() {}

  public static String draw(Say say, String id, GritClass grit, long seed) {
    Patch patch = PATCHES.computeIfAbsent(new Lot(grit, seed), AbrasiveSurface::patch);
    Svg svg = patch(say, id, grit, patch, 212);
    long cover = patch.coverPercent();
    double width = PATCH_WIDTH_MM * PER_MM;
    double height = PATCH_HEIGHT_MM * PER_MM;
    double bar = 0.1 * PER_MM;
    double y = TOP + height + 14;
    double right = LEFT + width;
    svg.path(
        "M"
            + Svg.number(right - bar)
            + " "
            + Svg.number(y - 3)
            + "v6M"
            + Svg.number(right - bar)
            + " "
            + Svg.number(y)
            + "h"
            + Svg.number(bar)
            + "M"
            + Svg.number(right)
            + " "
            + Svg.number(y - 3)
            + "v6",
        Pen.INK,
        "scale");
    svg.text(right, y + 17, Anchor.END, Type.PLAIN, "100 \u00b5m");
    svg.rect(LEFT, y - 4, 14, 8, RingColour.named(grit.ring()).attributes());
    String named = say.at("drawn.abrasive-grit", Labels.grit(say, grit), Labels.ring(say, grit));
    svg.text(LEFT + 20, y + 4, Anchor.START, Type.STRONG, named);
    svg.text(
        LEFT + 20,
        y + 18,
        Anchor.START,
        Type.PLAIN,
        say.at("drawn.abrasive-grains", size(say, grit)));
    svg.text(LEFT, y + 33, Anchor.START, Type.QUIET, say.at("drawn.abrasive-assumed", cover));
    return svg.finish();
  }

  /** The patch alone, for captions beside it. */
  public static String bare(Say say, String id, GritClass grit, long seed) {
    Patch patch = PATCHES.computeIfAbsent(new Lot(grit, seed), AbrasiveSurface::patch);
    return patch(say, id, grit, patch, PATCH_HEIGHT_MM * PER_MM + 2 * TOP).finish();
  }

  /** Smallest and largest grain of a class, in words. */
  public static String size(Say say, GritClass grit) {
    return say.at(
        "drawn.abrasive-size",
        Math.round(grit.particleSize().low().millimetres() * 1000),
        Math.round(grit.particleSize().high().millimetres() * 1000));
  }

  private static Svg patch(Say say, String id, GritClass grit, Patch patch, double tall) {
    Svg svg =
        Svg.image(
            id,
            320,
            tall,
            say.at("drawn.abrasive-title", Labels.grit(say, grit), size(say, grit)),
            say.at(
                "drawn.abrasive-about",
                Figures.of(say, PATCH_WIDTH_MM),
                Figures.of(say, PATCH_HEIGHT_MM),
                patch.coverPercent(),
                Labels.ring(say, grit)));
    svg.rect(LEFT, TOP, PATCH_WIDTH_MM * PER_MM, PATCH_HEIGHT_MM * PER_MM, Pen.BODY, "bond");
    svg.path(patch.grains(), Pen.SOLID, "grains");
    svg.path(patch.facets(), Pen.PAPER, "facets");
    return svg;
  }

  private static Patch patch(Lot lot) {
    double low = lot.grit().particleSize().low().millimetres();
    double high = lot.grit().particleSize().high().millimetres();
    List<Grain> placed = place(low, high, new SplittableRandom(lot.seed()));
    double area = placed.stream().mapToDouble(Grain::area).sum();
    StringBuilder grains = new StringBuilder();
    StringBuilder facets = new StringBuilder();
    for (Grain grain : placed) {
      grains.append(path(grain, 1, 0, grain.corners().size()));
      if (grain.size() * PER_MM > SMALL) {
        facets.append(path(grain, 0.6, 0, 4));
      }
    }
    return new Patch(
        Math.round(100 * area / (PATCH_WIDTH_MM * PATCH_HEIGHT_MM)),
        grains.toString(),
        facets.toString());
  }

  /** Darts that miss every earlier grain, until the wanted share is covered or room runs out. */
  private static List<Grain> place(double low, double high, SplittableRandom lot) {
    List<Grain> grains = new ArrayList<>();
    double wanted = COVERED * PATCH_WIDTH_MM * PATCH_HEIGHT_MM;
    double covered = 0;
    Ground ground = new Ground(high);
    for (int dart = 0; dart < 40_000 && covered < wanted; dart++) {
      double size = low + (high - low) * lot.nextDouble();
      double margin = size / 2;
      Grain grain =
          new Grain(
              margin + (PATCH_WIDTH_MM - size) * lot.nextDouble(),
              margin + (PATCH_HEIGHT_MM - size) * lot.nextDouble(),
              size,
              corners(size, lot));
      if (ground.takes(grain)) {
        grains.add(grain);
        covered += grain.area();
      }
    }
    return grains;
  }

  /** What is taken so far, in cells as wide as the largest grain: only neighbours can touch. */
  private static final class Ground {
    private final double cellMm;
    private final Map<Long, List<Grain>> cells = new HashMap<>();

    Ground(double cellMm) {
      this.cellMm = cellMm;
    }

    /** Takes the grain, unless it would touch another. */
    boolean takes(Grain grain) {
      long column = (long) (grain.x() / cellMm);
      long row = (long) (grain.y() / cellMm);
      for (long c = column - 1; c <= column + 1; c++) {
        for (long r = row - 1; r <= row + 1; r++) {
          for (Grain other : cells.getOrDefault(key(c, r), List.of())) {
            double gap = (grain.size() + other.size()) / 2;
            if (Math.hypot(grain.x() - other.x(), grain.y() - other.y()) <= gap) {
              return false;
            }
          }
        }
      }
      cells.computeIfAbsent(key(column, row), any -> new ArrayList<>()).add(grain);
      return true;
    }

    private static long key(long column, long row) {
      return column * 100_003 + row;
    }
  }

  /** A blocky grain whose longest extent is its size; corners from its middle, mm. */
  private static List<Svg.Point> corners(double size, SplittableRandom lot) {
    double turn = lot.nextDouble() * Math.PI;
    List<Svg.Point> points = new ArrayList<>();
    // four corners are all an eye can see of the smallest
    int corners = size * PER_MM < SMALL ? 4 : 6;
    for (int i = 0; i < corners; i++) {
      // two opposite corners stand at full size, so that the grain is as large as it says
      double share = i % (corners / 2) == 0 ? 1 : 0.72 + 0.24 * lot.nextDouble();
      double angle = turn + 2 * Math.PI * i / corners;
      points.add(
          new Svg.Point(size / 2 * share * Math.cos(angle), size / 2 * share * Math.sin(angle)));
    }
    return points;
  }

  private static String path(Grain grain, double share, int from, int to) {
    List<Svg.Point> points = new ArrayList<>();
    for (Svg.Point p : grain.corners().subList(from, to)) {
      points.add(
          new Svg.Point(
              LEFT + (grain.x() + share * p.x()) * PER_MM,
              TOP + (grain.y() + share * p.y()) * PER_MM));
    }
    return Svg.through(points) + "Z";
  }
}
