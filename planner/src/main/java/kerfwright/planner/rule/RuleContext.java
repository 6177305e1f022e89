package kerfwright.planner.rule;

import kerfwright.planner.casework.CutCase;

/**
 * What a rule may look at besides the choice itself.
 *
 * @param cutCase the case
 */
public record RuleContext(CutCase cutCase) {}
