/** Fits of the constants that are said to be fitted, from calibration findings only. */
@NullMarked
package kerfwright.validation.fit;

import org.jspecify.annotations.NullMarked;
