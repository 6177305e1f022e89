/** Lessons and handouts in a database. */
@NullMarked
package kerfwright.app.storage.teaching;

import org.jspecify.annotations.NullMarked;
