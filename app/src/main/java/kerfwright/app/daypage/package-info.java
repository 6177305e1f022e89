/**
 * The day on the pages: the list, its plan as lanes to the scale of time, what to lay out and load
 * next, what would help, and what a move would break. The search runs beside the pages and only
 * when somebody asks for a plan; the solver is loaded then and not before.
 */
@NullMarked
package kerfwright.app.daypage;

import org.jspecify.annotations.NullMarked;
