package kerfwright.app.learner;

import kerfwright.planner.OwnChoice;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Identified;

/** The classic mistakes, each ready to be computed in a case of the invented practice. */
enum Mistake implements Identified {
  CARBIDE_THROUGH_CERAMIC(
      "K-0412", "open-porcelain", choice("B05", "electric-1to5", 100_000, Stroke.BRUSHING, 50)),
  DIAMOND_THROUGH_METAL(
      "K-0412",
      "pierce-metal",
      choice("D22", "electric-1to5", 180_000, Stroke.AGAINST_ROTATION, 50)),
  MANY_BLADES_FOR_BULK(
      "K-0412",
      "deepen-dentine",
      choice(LessonCases.MANY_BLADES, "electric-1to5", 200_000, Stroke.AXIAL, 50)),
  DRY_ON_VITAL(
      "K-0420", "open-enamel", choice("B21", "electric-1to5", 200_000, Stroke.AGAINST_ROTATION, 0)),
  DIAMOND_ON_ADHESIVE(
      "K-0431", "plane-remnant", choice("D04", "electric-1to5", 100_000, Stroke.BRUSHING, 50)),
  WITH_ROTATION_IN_A_SLOT(
      "K-0415", "slot-facial", choice("S03", "electric-1to5", 147_000, Stroke.WITH_ROTATION, 50));

  private final String reference;
  private final String operation;
  private final OwnChoice choice;

  Mistake(String reference, String operation, OwnChoice choice) {
    this.reference = reference;
    this.operation = operation;
    this.choice = choice;
  }

  private static OwnChoice choice(
      String instrument, String handpiece, double rpm, Stroke stroke, double water) {
    return new OwnChoice(instrument, handpiece, rpm, stroke, water);
  }

  /** Reference of its case. */
  String reference() {
    return reference;
  }

  /** Id of the operation it is made in. */
  String operation() {
    return operation;
  }

  OwnChoice choice() {
    return choice;
  }
}
