package kerfwright.catalogue.instrument;

/** What the working part is made of and how it removes material. Only a bladed one is a bur. */
public enum InstrumentKind {
  DIAMOND("diamond", "diamond instrument", false),
  SINTERED_DIAMOND("sintered-diamond", "sintered diamond instrument", false),
  CARBIDE("carbide", "carbide bur", true),
  STEEL("steel", "steel bur", true),
  CERAMIC("ceramic", "ceramic bur", true),
  POLYMER("polymer", "polymer bur", true),
  POLISHER("polisher", "polisher", false),
  DISC("disc", "polishing disc", false),
  STONE("stone", "mounted stone", false);

  private final String id;
  private final String label;
  private final boolean bladed;

  InstrumentKind(String id, String label, boolean bladed) {
    this.id = id;
    this.label = label;
    this.bladed = bladed;
  }

  /** The id used in files and JSON. */
  public String id() {
    return id;
  }

  public String label() {
    return label;
  }

  /** True for burs: blades with flutes between them. */
  public boolean bladed() {
    return bladed;
  }

  /** True where diamond grains do the work. */
  public boolean isDiamond() {
    return this == DIAMOND || this == SINTERED_DIAMOND;
  }
}
