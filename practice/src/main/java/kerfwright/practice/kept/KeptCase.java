package kerfwright.practice.kept;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;

/**
 * A case as it was kept at one time. A change adds a version; none is ever written over.
 *
 * @param id names the case in all its versions
 * @param version 1 for the first
 * @param reference the practice's own reference, never a name
 * @param tooth the tooth
 * @param procedure id of the procedure
 * @param at when it was kept, to the microsecond
 * @param form the fields of the case as an address carries them
 * @param steps the plan as it was planned; empty where it was kept without being planned
 */
public record KeptCase(
    UUID id,
    int version,
    String reference,
    Tooth tooth,
    String procedure,
    Instant at,
    String form,
    List<Step> steps) {
  public KeptCase {
    steps = List.copyOf(steps);
  }

  /**
   * One step as it was planned.
   *
   * @param operation variant and row of the operation, such as {@code access-natural.outline}
   * @param instrument label of the instrument
   * @param setRpm speed to set, or free speed at full pedal
   * @param loadN load, N
   * @param cutS time the bur cuts, s
   */
  public record Step(
      String operation, String instrument, double setRpm, double loadN, double cutS) {}

  /** The same case, changed. */
  public KeptCase next(Instant now, String changedForm, List<Step> planned) {
    return new KeptCase(id, version + 1, reference, tooth, procedure, now, changedForm, planned);
  }
}
