package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.KeepDefaults;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import org.jspecify.annotations.Nullable;

/**
 * The stretches a case is cut in: layer by layer from outside, the last part of the last layer as
 * approach at a light load, and the first entry of a walled opening as a punch along the axis.
 *
 * <p>Approach is the last 30 percent of what is cut in the layer, at most 0.5 mm; the punch opens
 * 0.6 of the width (project settings).
 *
 * @param cuts the stretches in order
 * @param keep what is kept, given or filled in
 * @param floor the layer whose surface is left at the floor, or null where nothing is left
 */
public record Segments(List<Segment> cuts, @Nullable Keep keep, @Nullable Layer floor) {
  private static final double APPROACH_SHARE = 0.3;
  private static final double APPROACH_MOST_M = 0.5e-3;
  private static final double PUNCH_WIDTH_SHARE = 0.6;
  private static final double THIN_M = 0.15e-3;
  private static final double SHORT_M = 0.3e-3;
  private static final double FILM_M = 0.5e-3;
  private static final double THINNEST_M = 1e-6;

  public Segments {
    cuts = List.copyOf(cuts);
  }

  /** Breaks a case into its stretches. */
  public static Segments of(CutCase c) {
    Keep keep = KeepDefaults.of(c);
    List<Segment> cuts = new ArrayList<>();
    double depth = 0;
    Layer floor = null;
    for (int i = 0; i < c.layers().size(); i++) {
      Layer layer = c.layers().get(i);
      double thick = layer.thickness().typical().metres();
      boolean kept = keep != null && keep.materialId().equals(layer.material().id());
      double left = kept && keep != null && keep.atLeast() != null ? keep.atLeast().metres() : 0;
      double cut = kept && keep != null && keep.all() ? 0 : Math.max(0, thick - left);
      if (cut > THINNEST_M) {
        boolean last = kept || i == c.layers().size() - 1 || nextStaysWhole(c, i, keep);
        Layer under = kept || i + 1 >= c.layers().size() ? null : c.layers().get(i + 1);
        Material below = kept ? layer.material() : under == null ? null : under.material();
        double margin = last ? margin(kept ? left : -1, under) : Double.POSITIVE_INFINITY;
        boolean whole = !kept && nextStaysWhole(c, i, keep);
        add(cuts, c, i, layer.material(), depth, depth + cut, below, last, margin, whole);
      }
      depth += cut;
      if (kept) {
        floor = layer;
        break;
      }
    }
    return new Segments(cuts, keep, floor);
  }

  private static double margin(double leftM, @Nullable Layer under) {
    if (leftM >= 0) {
      return leftM;
    }
    return under == null ? Double.POSITIVE_INFINITY : under.thickness().typical().metres();
  }

  private static boolean nextStaysWhole(CutCase c, int i, @Nullable Keep keep) {
    return keep != null
        && keep.all()
        && i + 1 < c.layers().size()
        && c.layers().get(i + 1).material().id().equals(keep.materialId());
  }

  private static void add(
      List<Segment> cuts,
      CutCase c,
      int index,
      Material material,
      double from,
      double to,
      @Nullable Material below,
      boolean last,
      double margin,
      boolean whole) {
    double area = c.outline().areaM2();
    double wall = c.outline().shape().walled() ? to - from : c.outline().width().metres();
    if (finishes(c.procedure())) {
      cuts.add(
          new Segment(
              index, material, Purpose.FINISH, false, from, to, area, wall, below, margin, whole));
      return;
    }
    boolean opens = cuts.isEmpty() && punches(c);
    boolean guarded = last && !Double.isInfinite(margin);
    if (guarded && !whole && !opens && to - from <= SHORT_M) {
      cuts.add(
          new Segment(
              index,
              material,
              Purpose.APPROACH,
              false,
              from,
              to,
              area,
              wall,
              below,
              margin,
              false));
      return;
    }
    double approach =
        guarded && to - from > (whole ? FILM_M : THIN_M)
            ? Math.min(APPROACH_MOST_M, APPROACH_SHARE * (to - from))
            : 0;
    double bulkTo = to - approach;
    double punchArea = 0;
    if (opens) {
      double width = PUNCH_WIDTH_SHARE * c.outline().width().metres();
      punchArea = Math.min(area / 2, Math.PI / 4 * width * width);
      cuts.add(
          new Segment(
              index,
              material,
              Purpose.BULK,
              true,
              from,
              bulkTo,
              punchArea,
              bulkTo - from,
              below,
              margin,
              whole));
    }
    cuts.add(
        new Segment(
            index,
            material,
            Purpose.BULK,
            false,
            from,
            bulkTo,
            area - punchArea,
            wall,
            below,
            approach > 0 ? Double.POSITIVE_INFINITY : margin,
            approach <= 0 && whole));
    if (approach > 0) {
      double height = c.outline().shape().walled() ? Math.max(approach, 0.3e-3) : wall;
      cuts.add(
          new Segment(
              index,
              material,
              Purpose.APPROACH,
              false,
              bulkTo,
              to,
              area,
              height,
              below,
              margin,
              whole));
    }
  }

  private static boolean finishes(Procedure procedure) {
    return procedure.finishes() || Procedure.OCCLUSAL_ADJUSTMENT.equals(procedure);
  }

  private static boolean punches(CutCase c) {
    return c.outline().shape().walled() && !Procedure.CROWN_SECTIONING.equals(c.procedure());
  }

  /** Depth of the floor when all is cut, m. */
  public double depthM() {
    return cuts.isEmpty() ? 0 : cuts.get(cuts.size() - 1).toM();
  }
}
