/** The first page: what is next, what is missing, what needs attention; and the first start. */
@NullMarked
package kerfwright.app.today;

import org.jspecify.annotations.NullMarked;
