package kerfwright.app.learner;

import java.util.List;
import java.util.Locale;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Identified;

/** The classic mistakes, each ready to be computed in a case of the invented practice. */
enum Mistake implements Identified {
  CARBIDE_THROUGH_CERAMIC("K-0412", "open-porcelain", "B05", 100_000, Stroke.BRUSHING, 50),
  DIAMOND_THROUGH_METAL("K-0412", "pierce-metal", "D22", 180_000, Stroke.AGAINST_ROTATION, 50),
  MANY_BLADES_FOR_BULK(
      "K-0412", "deepen-dentine", LessonCases.MANY_BLADES, 200_000, Stroke.AXIAL, 50),
  DRY_ON_VITAL("K-0420", "open-enamel", "B21", 200_000, Stroke.AGAINST_ROTATION, 0),
  DIAMOND_ON_ADHESIVE("K-0431", "plane-remnant", "D04", 100_000, Stroke.BRUSHING, 50),
  WITH_ROTATION_IN_A_SLOT("K-0415", "slot-facial", "S03", 147_000, Stroke.WITH_ROTATION, 50);

  private final String reference;
  private final String operation;
  private final String instrument;
  private final int rpm;
  private final Stroke stroke;
  private final int water;

  Mistake(
      String reference, String operation, String instrument, int rpm, Stroke stroke, int water) {
    this.reference = reference;
    this.operation = operation;
    this.instrument = instrument;
    this.rpm = rpm;
    this.stroke = stroke;
    this.water = water;
  }

  /** Reference of its case. */
  String reference() {
    return reference;
  }

  /** Address of its case with the choice filled in. */
  String address(List<Candidate> planned) {
    int step =
        1 + planned.stream().map(one -> one.work().operation().id()).toList().indexOf(operation);
    return String.format(
        Locale.ROOT,
        "/learn/choose/%2$s?instrument%1$d=%3$s&handpiece%1$d=electric-1to5&rpm%1$d=%4$d"
            + "&stroke%1$d=%5$s&water%1$d=%6$d#result",
        step,
        reference,
        instrument,
        rpm,
        stroke.id(),
        water);
  }
}
