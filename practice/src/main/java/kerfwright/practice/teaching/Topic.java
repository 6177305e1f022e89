package kerfwright.practice.teaching;

import java.util.Locale;

/** What a question is about; results are told by it. */
public enum Topic {
  INSTRUMENTS,
  NUMBERS,
  LAYERS,
  CHOICE,
  HANDLING,
  HEAT,
  REPROCESSING,
  OWN;

  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
