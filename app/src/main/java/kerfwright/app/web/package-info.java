/** The pages; the only place that knows Javalin and the templates. */
@NullMarked
package kerfwright.app.web;

import org.jspecify.annotations.NullMarked;
