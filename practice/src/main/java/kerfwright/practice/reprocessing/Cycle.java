package kerfwright.practice.reprocessing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerfwright.catalogue.reprocessing.ReprocessingFigure;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import org.jspecify.annotations.Nullable;

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

  /** Project setting: the exposure at 121 degC (15 min) is that much longer than at 134 (3 min). */
  private static final int LONGER_AT_121_MIN = 12;

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

  /** What is known of how long it takes as a whole; null where the time is a project setting. */
  public @Nullable ReprocessingFigure figure() {
    return this == B134 ? ProcessingStep.CYCLE.figure() : null;
  }

  /** Minutes as a whole where the practice has not set them. */
  public int usualMinutes() {
    return ProcessingStep.CYCLE.usualMinutes() + (celsius < 134 ? LONGER_AT_121_MIN : 0);
  }

  /** The setting that holds the practice's own minutes. */
  public String setting() {
    return "reprocessing.cycle-" + id + "-min";
  }

  /** Shorter than the exposure at 134 degC no cycle is, whatever was set. */
  public static int leastMinutes() {
    Double exposure = shortestExposure().numbers().typical();
    if (exposure == null) {
      throw new IllegalStateException("No exposure is told");
    }
    return (int) Math.ceil(exposure);
  }

  /** The exposure behind the least minutes. */
  public static ReprocessingFigure shortestExposure() {
    return ReprocessingFigures.packaged().find("exposure-4").orElseThrow();
  }

  /** Those a load of pouches may be run with. */
  public static List<Cycle> forPouches() {
    return Stream.of(values()).filter(one -> one.type != Type.N).toList();
  }

  public static Optional<Cycle> byId(String id) {
    return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
  }
}
