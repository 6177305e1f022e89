/** The operations of a case: the procedure's list laid through the layer stack. */
@NullMarked
package kerfwright.planner.operation;

import org.jspecify.annotations.NullMarked;
