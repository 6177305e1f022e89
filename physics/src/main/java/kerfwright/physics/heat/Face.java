package kerfwright.physics.heat;

/** What happens at the bottom or at the side of the body. */
public sealed interface Face {
  /** No heat passes. */
  record Insulated() implements Face {}

  /** Held at a temperature. */
  record Held(double temperatureC) implements Face {
    public Held {
      Require.finite("Temperature of a face", "degC", temperatureC);
    }
  }

  /** Washed by a coolant. */
  record Washed(Coolant coolant) implements Face {}

  static Face insulated() {
    return new Insulated();
  }

  static Face held(double temperatureC) {
    return new Held(temperatureC);
  }

  static Face washed(Coolant coolant) {
    return new Washed(coolant);
  }

  /** The coefficient that joins the last node to the outside; zero where it is not washed. */
  default double washingWPerM2K() {
    return this instanceof Washed washed ? washed.coolant().coefficientWPerM2K() : 0;
  }

  /** The temperature outside; zero where it has no meaning. */
  default double outsideC() {
    if (this instanceof Held held) {
      return held.temperatureC();
    }
    return this instanceof Washed washed ? washed.coolant().temperatureC() : 0;
  }

  default boolean isHeld() {
    return this instanceof Held;
  }
}
