package kerfwright.planner.plan;

/** What a step is for. */
public enum Purpose {
  BULK("bulk"),
  APPROACH("approach"),
  FINISH("finish"),
  POLISH("polish");

  private final String id;

  Purpose(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }
}
