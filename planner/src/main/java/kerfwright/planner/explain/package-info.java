/** Reasons, runners-up and cues in words. */
@NullMarked
package kerfwright.planner.explain;

import org.jspecify.annotations.NullMarked;
