package kerfwright.practice.teaching;

import kerfwright.catalogue.instrument.InstrumentProperties;

/** What is drawn with a question. */
public sealed interface Picture {
  /** An instrument seen from the side. */
  record OfInstrument(InstrumentProperties instrument) implements Picture {}

  /** A ring by its colour. */
  record OfRing(String colour) implements Picture {}
}
