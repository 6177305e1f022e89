package kerfwright.planner.casework;

import kerfwright.catalogue.instrument.InstrumentProperties;

/**
 * One physical instrument of the practice as it stands now.
 *
 * @param id the practice's own id
 * @param properties what it is
 * @param uses how often it was used
 * @param sterilisations how often it was sterilised
 * @param state only clean ones are planned with
 */
public record DrawerInstrument(
    String id, InstrumentProperties properties, int uses, int sterilisations, State state) {
  /** Where an instrument is in its round. */
  public enum State {
    CLEAN("clean"),
    USED("used"),
    IN_REPROCESSING("in-reprocessing"),
    WITHDRAWN("withdrawn");

    private final String id;

    State(String id) {
      this.id = id;
    }

    public String id() {
      return id;
    }
  }
}
