/** How grains and edges lose their sharpness. */
@NullMarked
package kerfwright.physics.wear;

import org.jspecify.annotations.NullMarked;
