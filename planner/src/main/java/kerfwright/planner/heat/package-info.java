/** The heat of the whole sequence at the pulp wall, and what to do about it. */
@NullMarked
package kerfwright.planner.heat;

import org.jspecify.annotations.NullMarked;
