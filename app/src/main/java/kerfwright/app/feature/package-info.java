/** What a part of the practice is to the server: routes, pages, notices. */
@NullMarked
package kerfwright.app.feature;

import org.jspecify.annotations.NullMarked;
