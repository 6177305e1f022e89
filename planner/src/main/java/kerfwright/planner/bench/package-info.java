/** One layer under a new instrument, without a case: what lessons are computed on. */
@NullMarked
package kerfwright.planner.bench;

import org.jspecify.annotations.NullMarked;
