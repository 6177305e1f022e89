package kerfwright.planner.casework;

import kerfwright.quantity.Message;

/**
 * Two things a case says that cannot both be meant.
 *
 * @param code stable and lower-case with hyphens
 * @param field the field that is to be looked at, as in a case file
 * @param message one sentence
 * @param fix what to write instead
 */
public record Contradiction(String code, String field, Message message, Fix fix) {}
