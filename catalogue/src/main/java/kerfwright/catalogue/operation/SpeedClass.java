package kerfwright.catalogue.operation;

/** Kinds of handpiece an operation asks for, preferred first. */
public enum SpeedClass {
  TURBINE("turbine"),
  SPEED_INCREASING("speed-increasing"),
  LOW("low");

  private final String id;

  SpeedClass(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }
}
