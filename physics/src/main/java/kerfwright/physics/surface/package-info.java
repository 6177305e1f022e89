/** What a pass leaves behind: roughness and damage. */
@NullMarked
package kerfwright.physics.surface;

import org.jspecify.annotations.NullMarked;
