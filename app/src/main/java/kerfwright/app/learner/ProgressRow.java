package kerfwright.app.learner;

import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Tally;

/**
 * One set of a learner.
 *
 * @param first its first answer
 * @param tally its answers
 */
public record ProgressRow(Given first, Tally tally) {}
