/** Instruments as things with a kind, a shape, a size and a shank. */
@NullMarked
package kerfwright.catalogue.instrument;

import org.jspecify.annotations.NullMarked;
