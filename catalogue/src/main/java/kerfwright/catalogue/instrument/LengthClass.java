package kerfwright.catalogue.instrument;

/** How long the head of a shape is for its family, as far as the name of the shape says. */
public enum LengthClass {
  SHORT("short"),
  STANDARD("standard"),
  MEDIUM("medium"),
  LONG("long"),
  EXTRA_LONG("extra-long");

  private final String id;

  LengthClass(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }
}
