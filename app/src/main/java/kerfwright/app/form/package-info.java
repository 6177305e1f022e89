/** What forms of pages send, as values. */
@NullMarked
package kerfwright.app.form;

import org.jspecify.annotations.NullMarked;
