/**
 * The day: which instrument lies on which tray, which steriliser load starts when, and what will be
 * short, in strict order of goals and with proof where there is proof.
 *
 * <p>Start with {@link kerfwright.practice.day.DayProblem}, {@link
 * kerfwright.practice.day.DayPlanner} and {@link kerfwright.practice.day.DayPlan}. Minutes are
 * counted from the start of the day; a field that holds them ends in {@code Min}.
 */
@NullMarked
package kerfwright.practice.day;

import org.jspecify.annotations.NullMarked;
