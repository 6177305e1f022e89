package kerfwright.planner.casework;

import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What is to be there at the end.
 *
 * @param intended the restoration to come, an id of the catalogue, where it matters
 * @param outline the opening or surface
 * @param keep what must remain, or null
 * @param finishRa the roughness wanted, or null
 */
public record Aim(
    @Nullable String intended, Outline outline, @Nullable Keep keep, @Nullable Length finishRa) {
  /** An opening or surface, nothing else asked. */
  public Aim(Outline outline) {
    this(null, outline, null, null);
  }
}
