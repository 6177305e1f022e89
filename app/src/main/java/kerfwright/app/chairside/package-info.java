/** Running a plan at the chair: one step fills the screen, and is logged in one tap. */
@NullMarked
package kerfwright.app.chairside;

import org.jspecify.annotations.NullMarked;
