package kerfwright.practice.reprocessing;

import java.util.List;
import java.util.stream.Stream;
import kerfwright.catalogue.reprocessing.ReprocessingFigure;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import kerfwright.quantity.Identified;

/**
 * A step of reprocessing, in its order. Minutes the practice has not set come from the figure of
 * that step, its high end, because nothing is ready too late by it; a step left out has 0 minutes.
 */
public enum ProcessingStep implements Identified {
  SOAK("step-minutes-1", true),
  ULTRASONIC("step-minutes-8", true),
  WASHER("step-minutes-2", false),
  RINSE("step-minutes-3", true),
  DRY("step-minutes-4", true),
  INSPECT("step-minutes-5", true),
  POUCH("step-minutes-6", true),
  CYCLE("step-minutes-10", true),
  COOL("step-minutes-7", true);

  private final String figure;
  private final boolean usual;

  ProcessingStep(String figure, boolean usual) {
    this.figure = figure;
    this.usual = usual;
  }

  /** True for a step before the load. */
  public boolean beforeLoad() {
    return compareTo(CYCLE) < 0;
  }

  /** Where the default comes from, and how sure it is. */
  public ReprocessingFigure figure() {
    return ReprocessingFigures.packaged().find(figure).orElseThrow();
  }

  /** Minutes where the practice has set none; the washer is instead of soak and ultrasonic. */
  int usualMinutes() {
    Double high = figure().numbers().high();
    if (high == null) {
      throw new IllegalStateException("The figure " + figure + " has no high end");
    }
    return usual ? (int) Math.round(high) : 0;
  }

  /** The steps that have one time each; a cycle of the steriliser has its own. */
  public static List<ProcessingStep> timed() {
    return Stream.of(values()).filter(one -> one != CYCLE).toList();
  }

  /**
   * The setting that holds the practice's own minutes; of the cycle, those of a practice that has
   * not given its cycles apart.
   */
  public String setting() {
    return "reprocessing." + id() + "-min";
  }
}
