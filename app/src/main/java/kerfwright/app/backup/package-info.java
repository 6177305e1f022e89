/** Everything the practice keeps, in one archive and back; backups by the clock. */
@NullMarked
package kerfwright.app.backup;

import org.jspecify.annotations.NullMarked;
