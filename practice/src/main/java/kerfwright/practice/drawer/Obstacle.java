package kerfwright.practice.drawer;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Why a change cannot be made, for one item.
 *
 * @param item which, null where it is not in the drawer yet
 * @param label what the practice calls it, empty where it is not known
 * @param why which rule stands against it
 */
public record Obstacle(@Nullable UUID item, String label, Refusal why) {}
