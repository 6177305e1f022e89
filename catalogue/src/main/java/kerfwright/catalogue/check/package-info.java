/** The check of all packaged tables at once, for the start of the program. */
@NullMarked
package kerfwright.catalogue.check;

import org.jspecify.annotations.NullMarked;
