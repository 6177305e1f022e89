/** Rules of thumb of the trade, with the findings for and against each. */
@NullMarked
package kerfwright.catalogue.claim;

import org.jspecify.annotations.NullMarked;
