/**
 * Finds the plan of a day, in strict order of goals and with proof where there is proof. The way in
 * is {@link kerfwright.schedule.search.DayPlanner}; {@link kerfwright.schedule.search.Replanner}
 * follows a plan through a changed day.
 */
@NullMarked
package kerfwright.schedule.search;

import org.jspecify.annotations.NullMarked;
