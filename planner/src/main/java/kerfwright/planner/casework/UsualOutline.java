package kerfwright.planner.casework;

import java.util.List;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothClass;
import kerfwright.planner.casework.Outline.Shape;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * The opening or surface a procedure usually has on a tooth.
 *
 * @param outline its shape and size
 * @param sources where it comes from
 * @param basis how sure it is
 */
public record UsualOutline(Outline outline, List<SourceKey> sources, Basis basis) {
  public UsualOutline {
    sources = List.copyOf(sources);
  }

  /**
   * The usual one.
   *
   * @param lesion the decay, or null
   */
  static UsualOutline of(Procedure procedure, Tooth tooth, @Nullable Lesion lesion) {
    return interim(procedure, tooth, lesion);
  }

  private static UsualOutline interim(Procedure p, Tooth tooth, @Nullable Lesion lesion) {
    boolean front =
        tooth.toothClass() == ToothClass.INCISOR || tooth.toothClass() == ToothClass.CANINE;
    boolean molar = tooth.toothClass() == ToothClass.MOLAR;
    if (p.equals(Procedure.ACCESS_CAVITY) || p.equals(Procedure.DEROOF_AND_REFINE)) {
      return front
          ? one(Shape.ELLIPSE, 3.0, 2.0)
          : molar ? one(Shape.ELLIPSE, 4.0, 3.0) : one(Shape.ELLIPSE, 3.2, 1.8);
    }
    if (p.equals(Procedure.CROWN_SECTIONING)) {
      return one(Shape.SLOT, 11, 1.4);
    }
    if (p.equals(Procedure.ADHESIVE_CLEAN_UP)) {
      return one(Shape.PATCH, 4, 3);
    }
    if (p.equals(Procedure.ENAMEL_BEVEL)) {
      return one(Shape.BAND, 8, 1);
    }
    if (p.equals(Procedure.CROWN_PREPARATION)) {
      return one(Shape.PATCH, 9, 6);
    }
    if (p.equals(Procedure.VENEER_PREPARATION) || p.finishes()) {
      return one(Shape.PATCH, 7, 5);
    }
    if (p.equals(Procedure.OCCLUSAL_ADJUSTMENT)) {
      return one(Shape.PATCH, 1.5, 1.2);
    }
    if (lesion != null && lesion.depth() == Lesion.Depth.DEEP) {
      return one(Shape.ELLIPSE, 4.5, 3.5);
    }
    return one(Shape.ELLIPSE, 3.5, 2.5);
  }

  private static UsualOutline one(Shape shape, double length, double width) {
    return new UsualOutline(
        new Outline(shape, Length.ofMillimetres(length), Length.ofMillimetres(width)),
        List.of(SourceKey.COMMON_PRACTICE),
        Basis.COMMON_PRACTICE);
  }
}
