/** The heat problem of contract 1. */
@NullMarked
package kerfwright.app.heatfile;

import org.jspecify.annotations.NullMarked;
