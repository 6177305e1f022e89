package kerfwright.catalogue.tooth;

/** Classes of teeth. */
public enum ToothClass {
  INCISOR("incisor"),
  CANINE("canine"),
  PREMOLAR("premolar"),
  MOLAR("molar");

  private final String label;

  ToothClass(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
