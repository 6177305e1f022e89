/** How abrasive grains and blades remove material, and what drives them. */
@NullMarked
package kerfwright.physics.cutting;

import org.jspecify.annotations.NullMarked;
