package kerfwright.schedule;

import java.util.List;

/**
 * What an appointment asks of one instrument type.
 *
 * @param type the type
 * @param lifeAsked share of one instrument's life the step uses; 0 where nobody knows
 * @param substitutes other types that may serve instead, and what they cost
 */
public record Need(String type, double lifeAsked, List<Substitute> substitutes) {
  public Need {
    substitutes = List.copyOf(substitutes);
    if (!(lifeAsked >= 0)) {
      throw new IllegalArgumentException("life asked must be 0 or more, got " + lifeAsked);
    }
  }

  /** A need of which nothing but the type is known. */
  public static Need of(String type) {
    return new Need(type, 0, List.of());
  }

  /** The same need with none of those substitutes. */
  public Need without(java.util.Collection<String> types) {
    return new Need(
        type, lifeAsked, substitutes.stream().filter(s -> !types.contains(s.type())).toList());
  }

  /** The same need with only those substitutes a stock knows. */
  public Need within(java.util.Collection<String> types) {
    return new Need(
        type, lifeAsked, substitutes.stream().filter(s -> types.contains(s.type())).toList());
  }
}
