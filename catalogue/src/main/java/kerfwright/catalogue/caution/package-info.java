/** Standing cautions, by the conditions under which they show. */
@NullMarked
package kerfwright.catalogue.caution;

import org.jspecify.annotations.NullMarked;
