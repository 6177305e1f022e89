/** What to buy and why: use against wear, and what cutting costs. */
@NullMarked
package kerfwright.practice.restock;

import org.jspecify.annotations.NullMarked;
