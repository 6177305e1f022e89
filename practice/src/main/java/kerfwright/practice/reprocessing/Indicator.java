package kerfwright.practice.reprocessing;

import java.util.Arrays;
import java.util.Optional;

/**
 * What tells whether a load is sterile. Mechanical and chemical ones are read with every load, the
 * biological one at least once a week and with every implant (figures monitor-1 and monitor-2 of
 * the catalogue, CDC); that packs come out dry and whole is common practice.
 */
public enum Indicator {
  /** The steriliser's own record of time, temperature and pressure. */
  PARAMETERS("parameters", true),
  /** The chemical indicators in and on the pouches. */
  CHEMICAL("chemical", true),
  /** Dry and whole packs. */
  PACKS("packs", true),
  /** The spore test, read hours or days later. */
  SPORES("spores", false);

  private final String id;
  private final boolean everyLoad;

  Indicator(String id, boolean everyLoad) {
    this.id = id;
    this.everyLoad = everyLoad;
  }

  public String id() {
    return id;
  }

  /** True where no load is released without it. */
  public boolean everyLoad() {
    return everyLoad;
  }

  public static Optional<Indicator> byId(String id) {
    return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
  }

  /** What was read. */
  public enum Result {
    NOT_READ("not-read"),
    PASSED("passed"),
    FAILED("failed");

    private final String id;

    Result(String id) {
      this.id = id;
    }

    public String id() {
      return id;
    }

    public static Optional<Result> byId(String id) {
      return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
    }
  }
}
