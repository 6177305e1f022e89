/** What the models say to each rule of thumb. */
@NullMarked
package kerfwright.planner.claim;

import org.jspecify.annotations.NullMarked;
