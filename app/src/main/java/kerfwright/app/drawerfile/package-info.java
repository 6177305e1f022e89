/** The drawer file of contract 1. */
@NullMarked
package kerfwright.app.drawerfile;

import org.jspecify.annotations.NullMarked;
