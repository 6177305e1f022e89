package kerfwright.app.reference;

import kerfwright.app.words.Say;
import kerfwright.quantity.Identified;

/** The reference pages, in the order they are listed. */
public enum Place implements Identified {
  NUMBERS,
  ALIKE,
  TEETH,
  LAYERS,
  GRIT,
  HANDPIECES,
  MATERIALS,
  PLOT,
  EVIDENCE,
  LIMITS,
  SOURCES;

  public String path() {
    return "/reference/" + id();
  }

  public String label(Say say) {
    return say.at("reference.place-" + id());
  }

  public String about(Say say) {
    return say.at("reference.about-" + id());
  }
}
