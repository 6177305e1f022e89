/** Teeth, their notation, and the usual layer stacks. */
@NullMarked
package kerfwright.catalogue.tooth;

import org.jspecify.annotations.NullMarked;
