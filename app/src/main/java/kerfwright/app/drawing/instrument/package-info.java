/** Instruments drawn to scale: silhouettes, blades, grit. */
@NullMarked
package kerfwright.app.drawing.instrument;

import org.jspecify.annotations.NullMarked;
