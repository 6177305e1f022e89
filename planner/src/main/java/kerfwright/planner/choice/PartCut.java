package kerfwright.planner.choice;

import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;

/**
 * What one layer takes of an operation.
 *
 * @param layer index in the stack
 * @param material its material
 * @param volumeM3 volume cut of it
 * @param cut what the sharp working part does in it
 * @param lives share of its life used, by the literature
 */
public record PartCut(int layer, Material material, double volumeM3, CutResult cut, double lives) {
  /** Time a working part that stayed as it is would take, s. */
  public double sharpS() {
    return volumeM3 / Math.max(1e-18, cut.removalM3PerS());
  }
}
