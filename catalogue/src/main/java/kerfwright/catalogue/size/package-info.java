/** Usual sizes of teeth, openings and cuts, least thickness left, published times. */
@NullMarked
package kerfwright.catalogue.size;

import org.jspecify.annotations.NullMarked;
