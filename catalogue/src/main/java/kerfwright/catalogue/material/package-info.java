/** Materials and their values, each with its range, source and standing. */
@NullMarked
package kerfwright.catalogue.material;

import org.jspecify.annotations.NullMarked;
