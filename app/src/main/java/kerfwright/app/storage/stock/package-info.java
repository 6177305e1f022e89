/** Drawer, loads, packages and requests in a database. */
@NullMarked
package kerfwright.app.storage.stock;

import org.jspecify.annotations.NullMarked;
