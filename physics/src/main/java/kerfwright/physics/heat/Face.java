package kerfwright.physics.heat;

import kerfwright.quantity.Check;

/** What happens at the bottom or at the side of the body. */
public sealed interface Face {
  /** No heat passes. */
  record Insulated() implements Face {}

  /** Held at a temperature. */
  record Held(double temperatureC) implements Face {
    public Held {
      Check.finite("Temperature of a face", "degC", temperatureC);
    }
  }

  /** Washed by a coolant. */
  record Washed(Coolant coolant) implements Face {}

  /**
   * The last layer is living tissue: blood comes at its own temperature and leaves at that of the
   * tissue (Pennes HH. J Appl Physiol 1948;1:93-122, from memory). What lies behind takes heat as a
   * conductance to the blood's temperature, or none. For the bottom only.
   *
   * <pre>
   *   rho c dT/dt = k d2T/dz2 - W (T - T_blood),   W = w rho_b c_b
   *
   *   w   blood volume per tissue volume and second, 1/s     rho_b c_b   4.0 MJ/(m3 K)
   *   W   sinkWPerM3K: what a kelvin of warming gives to the blood, W/(m3 K)
   * </pre>
   *
   * <p>Steady, with nothing behind, a slab of thickness L takes h_p (T_wall - T_blood) with h_p =
   * sqrt(k W) tanh(L sqrt(W / k)). Valid below 45 degC, where the vessels stop: from there blood
   * carries nothing away. Leaves out: vessels that widen or narrow with warmth, and single large
   * vessels.
   *
   * @param sinkWPerM3K W; zero is dead tissue
   * @param bloodC temperature of the blood
   * @param backWPerM2K conductance from the far side of the tissue; zero lets no heat pass
   */
  record Perfused(double sinkWPerM3K, double bloodC, double backWPerM2K) implements Face {
    private static final double STOPS_C = 45;

    /** Heat a volume of blood takes up, J/(m3 K). */
    static final double BLOOD_HEAT_J_PER_M3K = 4.0e6;

    /** Density of soft tissue over that of water: from volume per mass to volume per volume. */
    static final double TISSUE_DENSITY_SHARE = 1.05;

    public Perfused {
      Check.notNegative("Blood sink", "W/(m3 K)", sinkWPerM3K);
      Check.finite("Temperature of the blood", "degC", bloodC);
      Check.notNegative("Conductance behind the tissue", "W/(m2 K)", backWPerM2K);
    }

    /** Above this temperature of the tissue its blood stands still. */
    public static double stopsAboveC() {
      return STOPS_C;
    }

    /** From a flow as physiology gives it. */
    static Perfused ofFlow(double flowMlPerMinG, double bloodC, double backWPerM2K) {
      double perSecond = TISSUE_DENSITY_SHARE * flowMlPerMinG / 60;
      return new Perfused(perSecond * BLOOD_HEAT_J_PER_M3K, bloodC, backWPerM2K);
    }

    /** What is left of a departure from the blood's temperature after a time. */
    public double keptShare(double tissueM, double capacityJPerM2K, double afterS) {
      return Math.exp(-sinkWPerM3K * tissueM / capacityJPerM2K * afterS);
    }
  }

  static Face insulated() {
    return new Insulated();
  }

  static Face held(double temperatureC) {
    return new Held(temperatureC);
  }

  static Face washed(Coolant coolant) {
    return new Washed(coolant);
  }

  /** Tissue with a flow of blood in mL/min for each gram and nothing behind. */
  static Face perfused(double flowMlPerMinG, double bloodC) {
    return perfused(flowMlPerMinG, bloodC, 0);
  }

  /** The same with what lies behind it. */
  static Face perfused(double flowMlPerMinG, double bloodC, double backWPerM2K) {
    return Perfused.ofFlow(flowMlPerMinG, bloodC, backWPerM2K);
  }

  /** The coefficient that joins the last node to the outside; zero where nothing passes. */
  default double washingWPerM2K() {
    if (this instanceof Perfused tissue) {
      return tissue.backWPerM2K();
    }
    return this instanceof Washed washed ? washed.coolant().coefficientWPerM2K() : 0;
  }

  /** The temperature outside; zero where it has no meaning. */
  default double outsideC() {
    if (this instanceof Held held) {
      return held.temperatureC();
    }
    if (this instanceof Perfused tissue) {
      return tissue.bloodC();
    }
    return this instanceof Washed washed ? washed.coolant().temperatureC() : 0;
  }

  default boolean isHeld() {
    return this instanceof Held;
  }
}
