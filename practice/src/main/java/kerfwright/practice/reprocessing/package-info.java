/** Steps between two uses: cleaning, steriliser loads, their indicators, release and recall. */
@NullMarked
package kerfwright.practice.reprocessing;

import org.jspecify.annotations.NullMarked;
