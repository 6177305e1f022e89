/** What a layer is made of, as the models need it. */
@NullMarked
package kerfwright.physics.material;

import org.jspecify.annotations.NullMarked;
