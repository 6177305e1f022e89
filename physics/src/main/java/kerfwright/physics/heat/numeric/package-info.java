/** Numbers of any quantity: spacing of nodes, outputs in time, guards of constructors. */
@NullMarked
package kerfwright.physics.heat.numeric;

import org.jspecify.annotations.NullMarked;
