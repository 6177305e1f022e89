/** Curves and plots of figures. */
@NullMarked
package kerfwright.app.drawing.chart;

import org.jspecify.annotations.NullMarked;
