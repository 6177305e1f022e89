package kerfwright.planner.plan;

import kerfwright.catalogue.operation.Operation;
import kerfwright.quantity.Message;

/**
 * What is done between two steps without a rotary instrument: a look, a mark, a hand instrument.
 *
 * @param afterStep order of the step it follows, 0 before the first
 * @param row the operation
 * @param tool id of what it is done with, empty for looking
 * @param ifNeeded true where only the mouth shows whether it is needed
 * @param says what to do, one sentence
 */
public record Cue(int afterStep, Operation row, String tool, boolean ifNeeded, Message says) {}
