/** What turns the instrument. */
@NullMarked
package kerfwright.catalogue.handpiece;

import org.jspecify.annotations.NullMarked;
