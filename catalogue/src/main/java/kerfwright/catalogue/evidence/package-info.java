/** Published findings on cutting and heat. */
@NullMarked
package kerfwright.catalogue.evidence;

import org.jspecify.annotations.NullMarked;
