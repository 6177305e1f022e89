/** The page of the practice's settings. */
@NullMarked
package kerfwright.app.setting;

import org.jspecify.annotations.NullMarked;
