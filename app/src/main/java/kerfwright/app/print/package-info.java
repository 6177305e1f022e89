/** The printed card. */
@NullMarked
package kerfwright.app.print;

import org.jspecify.annotations.NullMarked;
