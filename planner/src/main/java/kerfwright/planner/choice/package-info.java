/** What can be chosen: stretches of the cut and candidates for each. */
@NullMarked
package kerfwright.planner.choice;

import org.jspecify.annotations.NullMarked;
