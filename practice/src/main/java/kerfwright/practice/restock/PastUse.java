package kerfwright.practice.restock;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/**
 * One use of one instrument, as it counts: all it cut on a case in a day, in however many steps.
 *
 * @param item the item of the drawer, or the lot it was taken out of
 * @param day when
 * @param caseReference on which case
 * @param procedure id of the procedure, empty where it is not known
 * @param mm3ByMaterial volume removed, by material id
 */
public record PastUse(
    UUID item,
    LocalDate day,
    String caseReference,
    String procedure,
    Map<String, Double> mm3ByMaterial) {
  public PastUse {
    mm3ByMaterial = Map.copyOf(mm3ByMaterial);
  }

  /** Another step of the same use taken in. */
  PastUse with(PastUse step) {
    Map<String, Double> together = new HashMap<>(mm3ByMaterial);
    step.mm3ByMaterial.forEach((material, mm3) -> together.merge(material, mm3, Double::sum));
    return new PastUse(
        item, day, caseReference, procedure.isEmpty() ? step.procedure : procedure, together);
  }
}
