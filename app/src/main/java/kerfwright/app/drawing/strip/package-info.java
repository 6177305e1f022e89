/** The layers of a tooth with each instrument at its work. */
@NullMarked
package kerfwright.app.drawing.strip;

import org.jspecify.annotations.NullMarked;
