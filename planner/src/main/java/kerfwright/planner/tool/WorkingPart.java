package kerfwright.planner.tool;

import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;

/** The working part of an instrument: abrasive or bladed. */
public sealed interface WorkingPart permits AbrasivePart, BladedPart {
  /** What it does at one operating point. */
  CutResult cut(Substance work, Engagement contact, OperatingPoint point);

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

  /** Sharpness now, from uses and sterilisations: 1 new, {@code Sharpness.WORN_OUT} at the end. */
  double sharpness();
}
