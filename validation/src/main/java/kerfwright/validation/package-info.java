/** Slow studies and benchmarks beside general-purpose peers. */
@NullMarked
package kerfwright.validation;

import org.jspecify.annotations.NullMarked;
