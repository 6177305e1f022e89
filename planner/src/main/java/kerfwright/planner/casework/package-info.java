/** What is asked: the case, its layer stack and the drawer as it stands. */
@NullMarked
package kerfwright.planner.casework;

import org.jspecify.annotations.NullMarked;
