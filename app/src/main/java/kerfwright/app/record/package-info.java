/** Pages of the cut record: searched, looked at, added to, corrected, verified. */
@NullMarked
package kerfwright.app.record;

import org.jspecify.annotations.NullMarked;
