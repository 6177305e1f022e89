/** What the practice has set for itself: language, people, times of its own reprocessing. */
@NullMarked
package kerfwright.practice.setting;

import org.jspecify.annotations.NullMarked;
