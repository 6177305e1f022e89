/** What is kept, on SQLite or PostgreSQL; the only place that knows SQL. */
@NullMarked
package kerfwright.app.storage;

import org.jspecify.annotations.NullMarked;
