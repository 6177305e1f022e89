package kerfwright.planner.casework;

import java.util.Arrays;
import java.util.List;

/** How a thickness is known; it decides how far the true one may lie from it. */
public enum Known {
  /** Read between two clear edges on a parallel radiograph. */
  FILM("film"),
  /** Dentine left under proximal decay, read on a bitewing: the true one is thinner. */
  BITEWING("bitewing"),
  /** Measured on the piece, with a gauge. */
  MEASURED("measured"),
  /** The usual thickness as published. */
  USUAL("usual"),
  /** Given with a low and a high end of its own. */
  RANGE("range");

  private final String id;

  Known(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  /** What a case may say; a range says it by itself. */
  public static List<Known> told() {
    return Arrays.stream(values()).filter(one -> one != RANGE).toList();
  }
}
