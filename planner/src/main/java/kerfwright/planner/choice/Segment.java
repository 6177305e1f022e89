package kerfwright.planner.choice;

import kerfwright.catalogue.material.Material;
import kerfwright.planner.plan.Purpose;
import org.jspecify.annotations.Nullable;

/**
 * One stretch of the cut: one purpose in one layer.
 *
 * @param layer index in the stack
 * @param material what is cut
 * @param purpose bulk, approach, finish or polish
 * @param punch true for the first entry along the axis
 * @param fromM depth where it starts
 * @param toM depth where it ends
 * @param areaM2 area cut, seen along the axis
 * @param engagedM height of wall or surface the side of the head can meet
 * @param below what lies under the end of the cut, if told
 * @param marginM how far a slip may go before it harms: what is kept below; infinite in mid-layer
 * @param wholeBelow true where what lies below must not be touched at all
 */
public record Segment(
    int layer,
    Material material,
    Purpose purpose,
    boolean punch,
    double fromM,
    double toM,
    double areaM2,
    double engagedM,
    @Nullable Material below,
    double marginM,
    boolean wholeBelow) {
  public double volumeM3() {
    return areaM2 * (toM - fromM);
  }
}
