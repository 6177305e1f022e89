/** How a grain or a blade cuts, and how a stroke is led. */
@NullMarked
package kerfwright.app.drawing.cut;

import org.jspecify.annotations.NullMarked;
