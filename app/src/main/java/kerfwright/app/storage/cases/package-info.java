/** Kept cases, runs, the cut record and days in a database. */
@NullMarked
package kerfwright.app.storage.cases;

import org.jspecify.annotations.NullMarked;
