/** Handouts: what they are about, with the practice's own words. */
@NullMarked
package kerfwright.practice.handout;

import org.jspecify.annotations.NullMarked;
