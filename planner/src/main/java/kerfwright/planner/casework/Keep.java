package kerfwright.planner.casework;

import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What must remain.
 *
 * @param materialId the material to be kept
 * @param atLeast the least thickness that must remain, or null: all of it, it must not be touched
 */
public record Keep(String materialId, @Nullable Length atLeast) {}
