/** Whirl and neck stress of the overhung instrument. */
@NullMarked
package kerfwright.physics.shaft;

import org.jspecify.annotations.NullMarked;
