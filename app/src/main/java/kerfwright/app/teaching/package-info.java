/** Teaching from the models: lectures, comparisons, claims, the number lesson, handouts. */
@NullMarked
package kerfwright.app.teaching;

import org.jspecify.annotations.NullMarked;
