package kerfwright.catalogue.instrument;

import kerfwright.quantity.Identified;

/** How long the head of a shape is for its family, as far as the name of the shape says. */
public enum LengthClass implements Identified {
  SHORT,
  STANDARD,
  MEDIUM,
  LONG,
  EXTRA_LONG;
}
