package kerfwright.catalogue.operation;

/** What an operation asks of the water. */
public enum WaterRule {
  /** Spray reaching the tip. */
  SPRAY("spray"),
  /** Spray or drops; moist is enough at low speed. */
  MOIST("moist"),
  /** Dry to see, in touches of a few seconds. */
  DRY_TOUCHES("dry-touches"),
  /** Paste or nothing. */
  NONE("none");

  private final String id;

  WaterRule(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }
}
