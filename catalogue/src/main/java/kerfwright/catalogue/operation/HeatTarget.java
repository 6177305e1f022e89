package kerfwright.catalogue.operation;

import kerfwright.quantity.Identified;

/** Where the heat of an operation is judged. */
public enum HeatTarget implements Identified {
  /** The pulp is to live: its wall. */
  PULP_WALL,
  /** The chamber is or will be open: the outer root surface. */
  ROOT_SURFACE,
  NONE;
}
