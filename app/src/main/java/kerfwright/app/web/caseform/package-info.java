/** The form of a case: what is typed, what is usual, what is at fault. */
@NullMarked
package kerfwright.app.web.caseform;

import org.jspecify.annotations.NullMarked;
