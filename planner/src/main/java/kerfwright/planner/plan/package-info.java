/** What is answered: the cut plan, one value that every page, print and record shows. */
@NullMarked
package kerfwright.planner.plan;

import org.jspecify.annotations.NullMarked;
