/**
 * The day list of the practice: who comes when into which chair, what each tray needs by the plan
 * of its case, and which pieces of the drawer can lie on it.
 *
 * <p>Start with {@link kerfwright.practice.daylist.DayList} and {@link
 * kerfwright.practice.daylist.DrawerDay}.
 */
@NullMarked
package kerfwright.practice.daylist;

import org.jspecify.annotations.NullMarked;
