package kerfwright.planner.casework;

import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * The decay as found.
 *
 * @param depth how deep it reaches
 * @param activity whether it goes on
 * @param texture how it feels to the probe, where told
 */
public record Lesion(Depth depth, Activity activity, @Nullable Texture texture) {
  /** Outer, middle or inner third of the dentine. */
  public enum Depth implements Identified {
    SHALLOW,
    MODERATE,
    DEEP
  }

  /** Whether decay goes on. */
  public enum Activity implements Identified {
    ACTIVE,
    ARRESTED
  }

  /** Hardness of the dentine as the trade grades it by feel. */
  public enum Texture implements Identified {
    SOFT,
    LEATHERY,
    FIRM,
    HARD
  }
}
