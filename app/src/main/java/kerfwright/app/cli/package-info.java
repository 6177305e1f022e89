/** The commands of contract 1. */
@NullMarked
package kerfwright.app.cli;

import org.jspecify.annotations.NullMarked;
