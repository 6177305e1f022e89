/** Pages for learners: what a choice would do, question sets, progress under an alias, a class. */
@NullMarked
package kerfwright.app.learner;

import org.jspecify.annotations.NullMarked;
