package kerfwright.practice.teaching;

import kerfwright.quantity.Identified;

/** What a question is about; results are told by it. */
public enum Topic implements Identified {
  INSTRUMENTS,
  NUMBERS,
  LAYERS,
  CHOICE,
  HANDLING,
  HEAT,
  REPROCESSING,
  OWN;
}
