package kerfwright.catalogue.operation;

import kerfwright.quantity.Identified;

/**
 * The few shapes of what is cut. Pocket: an opening with walls, area times depth. Slot: a path as
 * wide as a head and a little. Groove: several shallow paths. Band: a strip along a line (finish
 * line, bevel, rim). Skin: a layer of even thickness off a surface. Sweep: a surface gone over, no
 * depth to speak of (finishing, polishing).
 */
public enum GeometryKind implements Identified {
  NONE,
  POCKET,
  SLOT,
  GROOVE,
  BAND,
  SKIN,
  SWEEP;
}
