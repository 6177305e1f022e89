package kerfwright.practice.drawer;

import java.util.UUID;

/**
 * An item as someone saw it.
 *
 * @param item which
 * @param version the version that was on the screen
 */
public record Pick(UUID item, int version) {}
