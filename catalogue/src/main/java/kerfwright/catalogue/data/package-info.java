/** Reads the packaged data files and reports every fault in them at once. */
@NullMarked
package kerfwright.catalogue.data;

import org.jspecify.annotations.NullMarked;
