/** Scanned codes lead to what they name, and labels with such codes are printed. */
@NullMarked
package kerfwright.app.label;

import org.jspecify.annotations.NullMarked;
