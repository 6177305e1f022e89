/** Cases that are kept: the form as filled in, and the plan as it was planned. */
@NullMarked
package kerfwright.practice.kept;

import org.jspecify.annotations.NullMarked;
