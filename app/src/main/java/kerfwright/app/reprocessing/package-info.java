/** Pages of reprocessing: what waits, what runs, what was released or failed. */
@NullMarked
package kerfwright.app.reprocessing;

import org.jspecify.annotations.NullMarked;
