/** A cut plan as text and as JSON, and how its figures are written for people. */
@NullMarked
package kerfwright.app.plan;

import org.jspecify.annotations.NullMarked;
