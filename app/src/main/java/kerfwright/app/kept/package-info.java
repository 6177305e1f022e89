/** The pages of kept cases: found again, opened again, as planned and as run. */
@NullMarked
package kerfwright.app.kept;

import org.jspecify.annotations.NullMarked;
