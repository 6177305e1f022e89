package kerfwright.practice.drawer;

import java.util.UUID;
import kerfwright.quantity.Identified;

/** Someone else was quicker; nothing was written. */
public final class DrawerConflict extends Exception {
  private static final long serialVersionUID = 1L;

  /** What stood in the way. */
  public enum Kind implements Identified {
    CHANGED_MEANWHILE,
    LABEL_TAKEN
  }

  private final UUID item;
  private final Kind kind;

  public DrawerConflict(UUID item, String label, Kind kind) {
    super(label + ": " + kind);
    this.item = item;
    this.kind = kind;
  }

  public UUID item() {
    return item;
  }

  public Kind kind() {
    return kind;
  }
}
