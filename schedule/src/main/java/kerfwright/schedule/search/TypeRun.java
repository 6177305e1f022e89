package kerfwright.schedule.search;

/** Where the instruments of one type stand while a day is gone through in time. */
final class TypeRun {
  static final int NEVER = Integer.MAX_VALUE;

  final TypeView type;
  final int[] left;
  private final DayView view;
  private final int[] cleanFrom;
  private final int[] readyFrom;

  TypeRun(DayView view, TypeView type) {
    this.view = view;
    this.type = type;
    left = type.left.clone();
    cleanFrom = new int[type.units];
    readyFrom = new int[type.units];
    for (int u = 0; u < type.units; u++) {
      cleanFrom[u] = type.clean[u] ? type.fromMin[u] : NEVER;
      readyFrom[u] = type.clean[u] ? NEVER : type.fromMin[u];
    }
  }

  boolean serves(int u, int d) {
    return cleanFrom[u] <= type.startMin[d] && left[u] > 0;
  }

  /** Clean by now or by the end of a load that runs, with uses left. */
  boolean covers(int u) {
    return cleanFrom[u] != NEVER && left[u] > 0;
  }

  void use(int u, int d) {
    left[u]--;
    cleanFrom[u] = NEVER;
    readyFrom[u] = type.readyMin[d];
  }

  /** From when an instrument in use, or used, may go into a load. */
  int readyFrom(int u) {
    return readyFrom[u];
  }

  boolean loads(int u, int q) {
    return readyFrom[u] <= view.slotMin[q];
  }

  void load(int u, int q) {
    cleanFrom[u] = view.endOf(q);
    readyFrom[u] = NEVER;
  }
}
