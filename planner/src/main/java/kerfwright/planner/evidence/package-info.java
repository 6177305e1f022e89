/** Holds the planner's own models against published findings. */
@NullMarked
package kerfwright.planner.evidence;

import org.jspecify.annotations.NullMarked;
