/** What people and programs hand in, as a tree that knows its lines, and what is wrong with it. */
@NullMarked
package kerfwright.app.input;

import org.jspecify.annotations.NullMarked;
