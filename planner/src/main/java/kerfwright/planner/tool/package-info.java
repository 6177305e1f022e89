/** An instrument of the drawer as the models see it. */
@NullMarked
package kerfwright.planner.tool;

import org.jspecify.annotations.NullMarked;
