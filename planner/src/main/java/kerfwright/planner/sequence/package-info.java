/** Stretches of the cut, candidates for each, and the shortest path through them. */
@NullMarked
package kerfwright.planner.sequence;

import org.jspecify.annotations.NullMarked;
