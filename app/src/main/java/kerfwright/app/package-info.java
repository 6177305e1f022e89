/** The application around the planner; wired by hand in {@link kerfwright.app.Wiring}. */
@NullMarked
package kerfwright.app;

import org.jspecify.annotations.NullMarked;
