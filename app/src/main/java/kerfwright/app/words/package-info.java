/** The texts of pages and print, in the languages of the program; {@code Say} is the way in. */
@NullMarked
package kerfwright.app.words;

import org.jspecify.annotations.NullMarked;
