/** Figures that decide what is allowed, each read in its source. */
@NullMarked
package kerfwright.catalogue.limit;

import org.jspecify.annotations.NullMarked;
