package kerfwright.catalogue.caution;

import kerfwright.quantity.Identified;

/** The closed set of conditions that call up a caution. */
public enum CautionCondition implements Identified {
  ALWAYS,
  CUTTING_TOOTH,
  CUTTING_METAL,
  CUTTING_CERAMIC,
  CUTTING_COMPOSITE,
  CUTTING_ZIRCONIA,
  VITAL_TOOTH,
  BONE,
  POST,
  AMALGAM,
  HIGH_SPEED,
  OPEN_WOUND,
  ADJACENT_TOOTH,
  MODEL_OUTPUT,
  TEACHING,
  NOISE;
}
