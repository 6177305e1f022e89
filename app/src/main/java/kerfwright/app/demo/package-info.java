/** The invented practice shown by serve --demo. */
@NullMarked
package kerfwright.app.demo;

import org.jspecify.annotations.NullMarked;
