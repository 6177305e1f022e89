package kerfwright.planner.tool;

import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.CuttingConstants;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;

/** The working part of an instrument: abrasive or bladed. */
public sealed interface WorkingPart permits AbrasivePart, BladedPart {
  /** What it does at one operating point. */
  CutResult cut(
      CuttingConstants constants, Substance work, Engagement contact, OperatingPoint point);

  /** The same with the usual constants. */
  default CutResult cut(Substance work, Engagement contact, OperatingPoint point) {
    return cut(CuttingConstants.TYPICAL, work, contact, point);
  }

  /** Roughness it leaves, m. */
  double raM(Substance work, CutResult cut);

  /** Share of its life used by a volume, 1/m3. */
  double livesPerM3(Substance work, double rimSpeedMPerS);

  /** Force along the rim over load; it does not depend on the speed. */
  double forceRatio(Substance work, Engagement contact, double loadN);

  /** The greatest that ratio can be. */
  double greatestForceRatio();

  /** Hardness of what cuts, Pa. */
  double hardnessPa();

  /** Lives used before. */
  double livesUsed();

  /** Sharpness now, from lives used and sterilisations: 1 new. */
  double sharpness();

  /**
   * Mean rate while a share of life is used, over the rate now.
   *
   * @param steadyShare share of the rate now that does not dull, see {@link CutResult}
   */
  double meanOver(double livesInStep, double steadyShare);
}
