/** Samples over ranges of thickness, properties and model error. */
@NullMarked
package kerfwright.planner.uncertainty;

import org.jspecify.annotations.NullMarked;
