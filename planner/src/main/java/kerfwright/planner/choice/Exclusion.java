package kerfwright.planner.choice;

/**
 * Why an instrument is not allowed.
 *
 * @param code stable code
 * @param text one plain sentence
 */
public record Exclusion(String code, String text) {}
