/** Reads one topic's packaged rows with the standing every row carries. */
@NullMarked
package kerfwright.catalogue.data;

import org.jspecify.annotations.NullMarked;
