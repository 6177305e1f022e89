/** Usual layer stacks by tooth and restoration, and the anatomy behind them. */
@NullMarked
package kerfwright.catalogue.stack;

import org.jspecify.annotations.NullMarked;
