/** Slow studies and side-by-side measurements. */
@NullMarked
package kerfwright.validation;

import org.jspecify.annotations.NullMarked;
