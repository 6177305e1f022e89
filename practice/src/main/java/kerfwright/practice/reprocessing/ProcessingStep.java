package kerfwright.practice.reprocessing;

import java.util.List;
import java.util.stream.Stream;
import kerfwright.catalogue.reprocessing.ReprocessingFigure;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;

/**
 * A step of reprocessing, in its order. Minutes the practice has not set come from the figure of
 * that step, its high end, because nothing is ready too late by it; a step left out has 0 minutes.
 */
public enum ProcessingStep {
  SOAK("soak", "step-minutes-1", true),
  ULTRASONIC("ultrasonic", "step-minutes-8", true),
  WASHER("washer", "step-minutes-2", false),
  RINSE("rinse", "step-minutes-3", true),
  DRY("dry", "step-minutes-4", true),
  INSPECT("inspect", "step-minutes-5", true),
  POUCH("pouch", "step-minutes-6", true),
  CYCLE("cycle", "step-minutes-10", true),
  COOL("cool", "step-minutes-7", true);

  private final String id;
  private final String figure;
  private final boolean usual;

  ProcessingStep(String id, String figure, boolean usual) {
    this.id = id;
    this.figure = figure;
    this.usual = usual;
  }

  public String id() {
    return id;
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
    return "reprocessing." + id + "-min";
  }
}
