/** Changes of a day that end a shortage, each planned for and ranked by its cost. */
@NullMarked
package kerfwright.schedule.remedy;

import org.jspecify.annotations.NullMarked;
