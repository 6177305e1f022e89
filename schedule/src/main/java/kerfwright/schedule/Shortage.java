package kerfwright.schedule;

/**
 * A need no clean instrument is there for.
 *
 * @param appointment the appointment's id
 * @param type the missing type
 */
public record Shortage(String appointment, String type) {}
