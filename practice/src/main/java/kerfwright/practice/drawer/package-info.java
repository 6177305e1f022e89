/** The practice's stock: what lies where, in which state, and how it came there. */
@NullMarked
package kerfwright.practice.drawer;

import org.jspecify.annotations.NullMarked;
