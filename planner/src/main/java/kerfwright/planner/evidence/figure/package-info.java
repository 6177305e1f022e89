/** What the models say of one published finding. */
@NullMarked
package kerfwright.planner.evidence.figure;

import org.jspecify.annotations.NullMarked;
