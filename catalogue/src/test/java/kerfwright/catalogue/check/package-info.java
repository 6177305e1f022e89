/** Checks the packaged data as a whole. */
@NullMarked
package kerfwright.catalogue.check;

import org.jspecify.annotations.NullMarked;
