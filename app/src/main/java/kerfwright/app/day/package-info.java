/** The day file, and the command that plans it. */
@NullMarked
package kerfwright.app.day;

import org.jspecify.annotations.NullMarked;
