package kerfwright.app.drawing;

import kerfwright.catalogue.material.Material;
import kerfwright.quantity.Identified;

/** Hatchings that tell the layers of a section apart without colour; cut to a rectangle. */
public enum Hatch implements Identified {
  /** Enamel: prisms. */
  UPRIGHT,
  /** Dentine: tubules. */
  TUBULES,
  /** Carious dentine. */
  CROSSES,
  /** Bone and root. */
  DASHES,
  /** Metal. */
  PAIRS,
  /** Ceramic. */
  SLANTED,
  /** Zirconia. */
  LATTICE,
  /** Polymer. */
  DOTS,
  /** Cement. */
  LEVEL;

  public static Hatch of(Material material) {
    return switch (material.group()) {
      case TOOTH ->
          switch (material.id()) {
            case "enamel" -> UPRIGHT;
            case "carious-dentine" -> CROSSES;
            case "cementum" -> DASHES;
            default -> TUBULES;
          };
      case BONE -> DASHES;
      case METAL -> PAIRS;
      case CERAMIC -> material.id().startsWith("zirconia") ? LATTICE : SLANTED;
      case POLYMER -> DOTS;
      case CEMENT -> LEVEL;
    };
  }

  /** Width and height after which it repeats itself. */
  double[] tile() {
    return switch (this) {
      case UPRIGHT -> new double[] {5, 5};
      case TUBULES -> new double[] {7, 18};
      case CROSSES -> new double[] {9, 16};
      case DASHES -> new double[] {12, 10};
      case PAIRS, SLANTED, LATTICE -> new double[] {9, 9};
      case DOTS -> new double[] {7, 10};
      case LEVEL -> new double[] {3, 3};
    };
  }

  /** The ground under it. */
  public static Pen ground(Material material) {
    return switch (material.group()) {
      case TOOTH, BONE -> material.id().equals("enamel") ? Pen.LAYER : Pen.DENTINE;
      case METAL -> Pen.METAL;
      default -> Pen.LAYER;
    };
  }

  /**
   * Path data inside a rectangle.
   *
   * @param turned true where the neighbour has the same hatching: slanted the other way or wider
   */
  public String path(double x, double y, double width, double height, boolean turned) {
    StringBuilder d = new StringBuilder();
    double wide = turned ? 1.8 : 1;
    switch (this) {
      case UPRIGHT -> slanted(d, x, y, width, height, 0, 5 * wide);
      case TUBULES -> marks(d, x, y, width, height, 7 * wide, 9, 0, 4);
      case CROSSES -> {
        marks(d, x, y, width, height, 9 * wide, 8, 3, 3);
        marks(d, x, y, width, height, 9 * wide, 8, 3, -3);
      }
      case DASHES -> marks(d, x, y, width, height, 12 * wide, 5, 6, 0);
      case PAIRS -> {
        slanted(d, x, y, width, height, turned ? -1 : 1, 9);
        slanted(d, x + 2, y, width - 2, height, turned ? -1 : 1, 9);
      }
      case SLANTED -> slanted(d, x, y, width, height, turned ? 1 : -1, 9);
      case LATTICE -> {
        slanted(d, x, y, width, height, 1, 9 * wide);
        slanted(d, x, y, width, height, -1, 9 * wide);
      }
      case DOTS -> marks(d, x, y, width, height, 7 * wide, 5, 1, 0);
      case LEVEL -> {
        for (double at = 3 * wide; at < height; at += 3 * wide) {
          piece(d, x, y + at, x + width, y + at);
        }
      }
    }
    return d.toString();
  }

  /** Full lines, leaning by {@code slope} across for one down, clipped to the rectangle. */
  private static void slanted(
      StringBuilder d, double x, double y, double w, double h, int slope, double pitch) {
    double first = slope > 0 ? -h : 0;
    double last = slope < 0 ? w + h : w;
    for (double at = first + pitch / 2; at < last; at += pitch) {
      // along the line: across = at + slope * down; keep the part with 0 <= across <= w
      double from = slope == 0 ? 0 : Math.max(0, slope > 0 ? -at : at - w);
      double to = slope == 0 ? h : Math.min(h, slope > 0 ? w - at : at);
      if (to - from > 0.3) {
        piece(d, x + at + slope * from, y + from, x + at + slope * to, y + to);
      }
    }
  }

  /** Short marks in staggered rows, only those that fit; a layer too thin for one gets none. */
  private static void marks(
      StringBuilder d,
      double x,
      double y,
      double w,
      double h,
      double px,
      double py,
      double dx,
      double dy) {
    int row = 0;
    for (double down = py / 2; down < h; down += py) {
      double shift = row++ % 2 == 0 ? px / 4 : 3 * px / 4;
      for (double across = shift; across + dx < w; across += px) {
        double low = down - Math.abs(dy) / 2;
        if (low >= 0 && low + Math.abs(dy) <= h) {
          piece(d, x + across, y + down - dy / 2, x + across + dx, y + down + dy / 2);
        }
      }
    }
  }

  private static void piece(StringBuilder d, double x1, double y1, double x2, double y2) {
    d.append(Svg.move(new Svg.Point(x1, y1))).append(Svg.lineTo(new Svg.Point(x2, y2)));
  }
}
