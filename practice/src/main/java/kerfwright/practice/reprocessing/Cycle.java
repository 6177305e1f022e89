package kerfwright.practice.reprocessing;

import java.util.Arrays;
import java.util.Optional;

/**
 * A cycle of a small steam steriliser. The letter belongs to the cycle (EN 13060): B takes wrapped
 * and unwrapped loads of every kind, S what the steriliser's maker states, N unwrapped solid ones.
 */
public enum Cycle {
  B134("b-134", Type.B, 134),
  B121("b-121", Type.B, 121),
  S134("s-134", Type.S, 134),
  N134("n-134", Type.N, 134);

  /** Type of a cycle by EN 13060. */
  public enum Type {
    B,
    S,
    N
  }

  private final String id;
  private final Type type;
  private final int celsius;

  Cycle(String id, Type type, int celsius) {
    this.id = id;
    this.type = type;
    this.celsius = celsius;
  }

  public String id() {
    return id;
  }

  public Type type() {
    return type;
  }

  /** Temperature of the exposure, degC. */
  public int celsius() {
    return celsius;
  }

  public static Optional<Cycle> byId(String id) {
    return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
  }
}
