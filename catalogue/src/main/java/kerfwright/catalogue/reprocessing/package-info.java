/** Figures of reprocessing: minutes, exposures, storage, wear, and identifiers of barcodes. */
@NullMarked
package kerfwright.catalogue.reprocessing;

import org.jspecify.annotations.NullMarked;
