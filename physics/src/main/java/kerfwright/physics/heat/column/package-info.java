/** The quick column under a spot: layers as lumps, strokes that repeat taken together. */
@NullMarked
package kerfwright.physics.heat.column;

import org.jspecify.annotations.NullMarked;
