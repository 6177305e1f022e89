/** The page templates, compiled at build time; the only place that knows their engine. */
@NullMarked
package kerfwright.app.template;

import org.jspecify.annotations.NullMarked;
