package kerfwright.catalogue.stack;

import java.util.Optional;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/**
 * What age does to the dentine between the floor and the pulp.
 *
 * <p>Dentine over the pulp grows: by about 6.5 um a year in the crown, from memory of Murray PE and
 * others 2002 (its abstract, which was read, gives no rate). As a figure from memory it may only
 * widen the range: the high end rises above the reference age of 40, the low end falls below it;
 * the typical value stays. The reference age is chosen by this project: the ages of the measured
 * teeth are not given.
 *
 * <p>Sectional area of the chamber of first molars, mm2, by age in years (CBCT of 87 patients aged
 * 11 to 74): maxillary 11.582 - 0.142 age, mandibular 14.249 - 0.163 age.
 */
final class AgeOfTooth {
  private static final double CROWN_GROWTH_UM_PER_YEAR = 6.5;
  private static final int REFERENCE_AGE_YEARS = 40;
  private static final int YOUNGEST = 11;
  private static final int OLDEST = 74;
  private static final SourceKey GROWTH = new SourceKey("murray-2002");
  private static final SourceKey CHAMBER = new SourceKey("chamber-age-cbct-2017");

  private AgeOfTooth() {}

  static Range<Length> widen(Range<Length> dentine, int ageYears) {
    double shiftUm = CROWN_GROWTH_UM_PER_YEAR * (ageYears - REFERENCE_AGE_YEARS);
    double lowUm = dentine.low().micrometres() + Math.min(0, shiftUm);
    double highUm = dentine.high().micrometres() + Math.max(0, shiftUm);
    return new Range<>(
        Length.ofMicrometres(Math.max(lowUm, dentine.low().micrometres() / 2)),
        dentine.typical(),
        Length.ofMicrometres(highUm));
  }

  static Finding growthNote(int ageYears) {
    return Finding.note(
        "usual-stack-age",
        Message.of(
            ageYears >= REFERENCE_AGE_YEARS
                ? "finding.usual-stack-age-high"
                : "finding.usual-stack-age-low",
            ageYears),
        GROWTH);
  }

  static Optional<Finding> chamberNote(ToothPlace tooth, int ageYears) {
    if (!tooth.firstMolar() || ageYears < YOUNGEST || ageYears > OLDEST) {
      return Optional.empty();
    }
    double areaMm2 =
        tooth.arch().equals("maxillary") ? 11.582 - 0.142 * ageYears : 14.249 - 0.163 * ageYears;
    return Optional.of(
        Finding.note(
            "usual-stack-chamber",
            Message.of(
                "finding.usual-stack-chamber-" + tooth.arch(),
                ageYears,
                Rounded.places(areaMm2, 1)),
            CHAMBER));
  }
}
