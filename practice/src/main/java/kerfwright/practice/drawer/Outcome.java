package kerfwright.practice.drawer;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What became of a change: all of it was written, or nothing.
 *
 * @param batch names the change, to undo it; null where nothing was written
 * @param obstacles why nothing was written
 */
public record Outcome(@Nullable UUID batch, List<Obstacle> obstacles) {
  public Outcome {
    obstacles = List.copyOf(obstacles);
    if ((batch == null) == obstacles.isEmpty()) {
      throw new IllegalArgumentException("Either a batch or obstacles");
    }
  }

  static Outcome refused(List<Obstacle> obstacles) {
    return new Outcome(null, obstacles);
  }

  public boolean done() {
    return batch != null;
  }
}
