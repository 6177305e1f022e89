/** Studies and measurements too slow for every build. */
@NullMarked
package kerfwright.validation;

import org.jspecify.annotations.NullMarked;
