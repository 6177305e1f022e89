package kerfwright.app.reference;

import kerfwright.app.words.Say;

/** The reference pages, in the order they are listed. */
public enum Place {
  NUMBERS("numbers"),
  ALIKE("alike"),
  TEETH("teeth"),
  LAYERS("layers"),
  GRIT("grit"),
  HANDPIECES("handpieces"),
  MATERIALS("materials"),
  PLOT("plot"),
  EVIDENCE("evidence"),
  LIMITS("limits"),
  SOURCES("sources");

  private final String id;

  Place(String id) {
    this.id = id;
  }

  public String path() {
    return "/reference/" + id;
  }

  public String label(Say say) {
    return say.at("reference.place-" + id);
  }

  public String about(Say say) {
    return say.at("reference.about-" + id);
  }
}
