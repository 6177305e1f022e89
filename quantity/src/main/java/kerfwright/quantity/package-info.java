/**
 * Quantities with their unit, ranges of them, source keys and findings. Nothing else may move in.
 */
@NullMarked
package kerfwright.quantity;

import org.jspecify.annotations.NullMarked;
