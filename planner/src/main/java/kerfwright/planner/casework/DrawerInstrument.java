package kerfwright.planner.casework;

import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.quantity.Identified;

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
  public enum State implements Identified {
    CLEAN,
    USED,
    IN_REPROCESSING,
    WITHDRAWN;
  }
}
