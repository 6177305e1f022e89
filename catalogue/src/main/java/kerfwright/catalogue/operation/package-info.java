/** What the hand does, operation by operation: the ordered lists of every procedure, as data. */
@NullMarked
package kerfwright.catalogue.operation;

import org.jspecify.annotations.NullMarked;
