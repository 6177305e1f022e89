/** The case file of contract 1: one reader for file, form and API. */
@NullMarked
package kerfwright.app.casefile;

import org.jspecify.annotations.NullMarked;
