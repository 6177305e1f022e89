/** A case and a drawer in, a cut plan out. Pure functions: no storage, no web, no clock. */
@NullMarked
package kerfwright.planner;

import org.jspecify.annotations.NullMarked;
