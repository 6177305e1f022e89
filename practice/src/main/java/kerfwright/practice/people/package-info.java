/** Who works with the program: people and what they may do, their sessions, tokens of programs. */
@NullMarked
package kerfwright.practice.people;

import org.jspecify.annotations.NullMarked;
