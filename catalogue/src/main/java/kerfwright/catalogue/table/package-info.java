/** Reading of the packaged tables: every fault of a file is gathered, none is skipped. */
@NullMarked
package kerfwright.catalogue.table;

import org.jspecify.annotations.NullMarked;
