package kerfwright.app.reference;

/** The reference pages, in the order they are listed. */
public enum Place {
  NUMBERS("numbers", "Numbers", "What the number on the packet says, group by group."),
  ALIKE(
      "alike",
      "Find me the same",
      "The nearest in the drawer and the catalogue, and what differs."),
  TEETH("teeth", "Teeth", "One tooth in FDI, Universal and Palmer."),
  LAYERS("layers", "Usual layers", "How thick enamel, dentine and restorations usually are."),
  GRIT("grit", "Grit and blades", "Ring colours, grain sizes, blade counts, drawn to scale."),
  HANDPIECES("handpieces", "Handpieces", "Speed against torque, and where the figures come from."),
  MATERIALS("materials", "Materials", "Every value with range, source and standing."),
  PLOT("plot", "Hard or tough", "All materials in one picture, and what can cut them."),
  EVIDENCE("evidence", "Evidence", "Published findings that bear on the choice of instrument."),
  LIMITS("limits", "Limits and cautions", "The figures that decide, and what always holds."),
  SOURCES("sources", "Sources", "Every source, and what rests on it.");

  private final String id;
  private final String label;
  private final String about;

  Place(String id, String label, String about) {
    this.id = id;
    this.label = label;
    this.about = about;
  }

  public String path() {
    return "/reference/" + id;
  }

  public String label() {
    return label;
  }

  public String about() {
    return about;
  }
}
