package kerfwright.planner.operation;

import java.util.List;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Operation;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * One operation laid through the layers of a case.
 *
 * @param order place among the operations that cut, 1 first
 * @param operation what is done, with its window
 * @param parts the layers it goes through, in the order they are met; films are part of their
 *     neighbour
 * @param fromM depth where it starts, from the outer surface
 * @param toM depth where it ends
 * @param areaM2 area seen along the axis, or surface gone over
 * @param engagedM height of wall or surface the side of the head can meet
 * @param pathM length of the path, 0 where it has none
 * @param slotWidthM width of a slot the case gives: a head as wide is a last resort; 0 where none
 *     is given
 * @param headLeastM smallest head allowed, 0 where any
 * @param headMostM largest head allowed, infinite where any
 * @param reachM how deep head and neck must get
 * @param below what lies under the end of the cut, if told
 * @param marginM what is left below the end of the cut, up to the end of the layer that is spared;
 *     infinite where nothing is spared
 * @param wholeBelow true where what lies below must not be touched at all
 * @param heat where its heat is judged in this case
 * @param saidMm figures its texts name as {0}, {1} and so on, mm
 */
public record Work(
    int order,
    Operation operation,
    List<Part> parts,
    double fromM,
    double toM,
    double areaM2,
    double engagedM,
    double pathM,
    double slotWidthM,
    double headLeastM,
    double headMostM,
    double reachM,
    @Nullable Material below,
    double marginM,
    boolean wholeBelow,
    HeatTarget heat,
    List<Double> saidMm) {
  public Work {
    parts = List.copyOf(parts);
    saidMm = List.copyOf(saidMm);
  }

  /**
   * What is cut of one layer.
   *
   * @param layer index in the stack; of the nearest where the case's stack does not show it
   * @param material its material
   * @param volume volume cut by the diameter of the head
   */
  public record Part(int layer, Material material, VolumeOfHead volume) {}

  /** The volume a head of a given diameter cuts, m3. */
  @FunctionalInterface
  public interface VolumeOfHead {
    double m3(double headM);
  }

  /** The layer most of the work is in for a head of a given diameter. */
  public Material material(double headM) {
    return parts.stream()
        .max(java.util.Comparator.comparingDouble(p -> p.volume().m3(headM)))
        .orElseThrow()
        .material();
  }

  /** One of its texts: name, cue, stop, hazard or way, with the figures of this case. */
  public Message text(String text) {
    return Cue.text(operation, text, saidMm);
  }

  /** Everything cut, m3. */
  public double volumeM3(double headM) {
    return parts.stream().mapToDouble(p -> p.volume().m3(headM)).sum();
  }
}
