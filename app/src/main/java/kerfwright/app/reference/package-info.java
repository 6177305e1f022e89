/** What the reference pages and the command for alike instruments show. */
@NullMarked
package kerfwright.app.reference;

import org.jspecify.annotations.NullMarked;
