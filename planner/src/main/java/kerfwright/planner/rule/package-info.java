/** Named rules that veto a choice or add evidence for or against it. */
@NullMarked
package kerfwright.planner.rule;

import org.jspecify.annotations.NullMarked;
