/** Plans as they are carried out at the chair. */
@NullMarked
package kerfwright.practice.chairside;

import org.jspecify.annotations.NullMarked;
