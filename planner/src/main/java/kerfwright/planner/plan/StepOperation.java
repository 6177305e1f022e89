package kerfwright.planner.plan;

import java.util.List;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Operation;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * What a step does, in the words of the trade.
 *
 * @param row the operation
 * @param heat where its heat is judged
 * @param endCue when it is done
 * @param stopIf when to stop although it is not done; not every operation says it
 * @param layers what it takes of each layer, most first
 * @param slotWidthMm width of the slot, null where it is none
 * @param areaMm2 area seen along the axis, or surface gone over
 * @param remaining what stays under the cut, layer by layer where it matters
 * @param pulpDistanceMm dentine left between the cut and the pulp, null where none is in the stack
 */
public record StepOperation(
    Operation row,
    HeatTarget heat,
    Message endCue,
    Message stopIf,
    List<LayerCut> layers,
    @Nullable Double slotWidthMm,
    double areaMm2,
    List<Remaining> remaining,
    @Nullable Estimate pulpDistanceMm) {
  public StepOperation {
    layers = List.copyOf(layers);
    remaining = List.copyOf(remaining);
  }

  /** Everything it cuts, mm3. */
  public double volumeMm3() {
    return layers.stream().mapToDouble(LayerCut::mm3).sum();
  }

  /**
   * What is cut of one layer.
   *
   * @param layer index in the stack
   * @param materialId its material
   * @param mm3 volume
   */
  public record LayerCut(int layer, String materialId, double mm3) {}

  /**
   * What stays of a layer.
   *
   * @param materialId its material
   * @param mm how thick
   * @param leastMm the least that may stay as published, null where none is
   */
  public record Remaining(String materialId, Estimate mm, @Nullable Double leastMm) {}
}
