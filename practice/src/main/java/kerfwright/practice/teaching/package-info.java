/** Questions made from catalogue and models, sets of them, answers under an alias, a class. */
@NullMarked
package kerfwright.practice.teaching;

import org.jspecify.annotations.NullMarked;
