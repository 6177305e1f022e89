/** What the parts of the catalogue share: standing of a fact and the nearest valid name. */
@NullMarked
package kerfwright.catalogue;

import org.jspecify.annotations.NullMarked;
