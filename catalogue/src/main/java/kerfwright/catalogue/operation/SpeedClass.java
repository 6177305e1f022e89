package kerfwright.catalogue.operation;

import kerfwright.quantity.Identified;

/** Kinds of handpiece an operation asks for, preferred first. */
public enum SpeedClass implements Identified {
  TURBINE,
  SPEED_INCREASING,
  LOW;
}
