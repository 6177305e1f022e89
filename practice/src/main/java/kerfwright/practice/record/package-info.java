/** The cut record: what was used on which case and tooth; only ever added to, linked by hashes. */
@NullMarked
package kerfwright.practice.record;

import org.jspecify.annotations.NullMarked;
