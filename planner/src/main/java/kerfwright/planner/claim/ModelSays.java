package kerfwright.planner.claim;

import kerfwright.quantity.Message;

/**
 * What the models say to a claim.
 *
 * @param agrees whether they bear it out
 * @param words with the computed figures
 */
public record ModelSays(boolean agrees, Message words) {}
