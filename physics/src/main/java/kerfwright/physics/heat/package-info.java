/** How warmth spreads through the layers of a tooth while it is cut, and what reaches the pulp. */
@NullMarked
package kerfwright.physics.heat;

import org.jspecify.annotations.NullMarked;
