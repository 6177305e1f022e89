/** Finds the instruments most like a given one, by what they do and not by their name. */
@NullMarked
package kerfwright.planner.alike;

import org.jspecify.annotations.NullMarked;
