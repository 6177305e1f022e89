/** Instrument numbers: the ISO 6360 codec and US sizes. */
@NullMarked
package kerfwright.catalogue.number;

import org.jspecify.annotations.NullMarked;
