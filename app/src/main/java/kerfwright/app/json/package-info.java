/** How JSON is written: fields in a fixed order, figures to six digits. */
@NullMarked
package kerfwright.app.json;

import org.jspecify.annotations.NullMarked;
