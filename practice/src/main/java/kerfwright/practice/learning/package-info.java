/** What the practice's own log says about its pace and wear, shrunk towards the literature. */
@NullMarked
package kerfwright.practice.learning;

import org.jspecify.annotations.NullMarked;
