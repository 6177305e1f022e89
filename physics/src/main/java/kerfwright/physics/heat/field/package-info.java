/**
 * The heat in two directions: round the axis of a cut, and from a canal to the outer root surface.
 */
@NullMarked
package kerfwright.physics.heat.field;

import org.jspecify.annotations.NullMarked;
