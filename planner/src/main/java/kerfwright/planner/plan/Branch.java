package kerfwright.planner.plan;

import kerfwright.quantity.Message;

/**
 * How a plan goes on once the first touch has told the material.
 *
 * @param sign what hand, eye and ear notice; common practice
 * @param restorationId the restoration it tells
 * @param plan the whole plan for that restoration, its usual layers supposed
 */
public record Branch(Message sign, String restorationId, CutPlan plan) {}
