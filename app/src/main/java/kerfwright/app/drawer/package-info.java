/** The pages of the drawer: list, one instrument, changes, and lists taken over. */
@NullMarked
package kerfwright.app.drawer;

import org.jspecify.annotations.NullMarked;
