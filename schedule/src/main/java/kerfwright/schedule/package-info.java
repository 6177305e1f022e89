/**
 * The statement of a day and its plan: reusable items, the appointments that need them, cleaning,
 * and batches in sterilisers. Minutes are counted from the start of the day; a field that holds
 * them ends in {@code Min}.
 *
 * <p>Start with {@link kerfwright.schedule.Day}, {@link kerfwright.schedule.DayPlan} and {@link
 * kerfwright.schedule.Referee}; {@code search} finds plans, {@code remedy} what would end a
 * shortage.
 */
@NullMarked
package kerfwright.schedule;

import org.jspecify.annotations.NullMarked;
