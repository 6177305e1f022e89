/** What to buy and why, on a page, as CSV and on paper. */
@NullMarked
package kerfwright.app.restock;

import org.jspecify.annotations.NullMarked;
