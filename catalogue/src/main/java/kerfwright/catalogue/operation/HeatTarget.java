package kerfwright.catalogue.operation;

/** Where the heat of an operation is judged. */
public enum HeatTarget {
  /** The pulp is to live: its wall. */
  PULP_WALL("pulp-wall"),
  /** The chamber is or will be open: the outer root surface. */
  ROOT_SURFACE("root-surface"),
  NONE("none");

  private final String id;

  HeatTarget(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }
}
