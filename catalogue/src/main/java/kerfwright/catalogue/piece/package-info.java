/** Pieces of a drawer that are no rotary instruments. */
@NullMarked
package kerfwright.catalogue.piece;

import org.jspecify.annotations.NullMarked;
