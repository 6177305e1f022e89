package kerfwright.planner.plan;

import kerfwright.catalogue.operation.Operation;
import kerfwright.quantity.Message;

/**
 * An operation no clean instrument can do.
 *
 * @param row the operation
 * @param needs what would do it
 * @param essential true where the plan is refused without it
 */
public record Unfilled(Operation row, Message needs, boolean essential) {}
