package kerfwright.planner.plan;

import kerfwright.quantity.Identified;

/** How the instrument is led. Instruments turn clockwise seen from the shank. */
public enum Stroke implements Identified {
  AGAINST_ROTATION,
  WITH_ROTATION,
  AXIAL,
  BRUSHING
}
