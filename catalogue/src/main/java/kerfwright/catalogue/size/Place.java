package kerfwright.catalogue.size;

import java.util.List;
import kerfwright.catalogue.tooth.Tooth;
import org.jspecify.annotations.Nullable;

/**
 * Where a usual size is asked for.
 *
 * @param tooth the tooth
 * @param procedure id of the procedure
 * @param variant id of the variant, empty where none is chosen yet
 * @param ageYears age of the patient, or null
 */
public record Place(Tooth tooth, String procedure, String variant, @Nullable Integer ageYears) {
  public Place(Tooth tooth, String procedure, String variant) {
    this(tooth, procedure, variant, null);
  }

  /**
   * How exactly a row speaks of this place; below zero where it does not.
   *
   * @param scopes ids of procedures or variants, empty for all
   * @param teeth front, back, a class, or upper-6; with upper- or lower- before it; empty for all
   */
  int match(List<String> scopes, List<String> teeth) {
    int scope =
        scopes.isEmpty() ? 0 : scopes.contains(variant) ? 2 : scopes.contains(procedure) ? 1 : -1;
    int most = teeth.isEmpty() ? 0 : teeth.stream().mapToInt(this::match).max().orElse(-1);
    return scope < 0 || most < 0 ? -1 : 10 * scope + most;
  }

  private int match(String word) {
    boolean upper = word.startsWith("upper");
    boolean arched = upper || word.startsWith("lower");
    if (arched && upper != tooth.upper()) {
      return -1;
    }
    String what = arched ? word.substring(Math.min(word.length(), 6)) : word;
    int exact = arched ? 1 : 0;
    String toothClass = tooth.toothClass().id();
    boolean front = toothClass.equals("incisor") || toothClass.equals("canine");
    if (what.isEmpty()) {
      return exact;
    }
    if (what.equals(front ? "front" : "back")) {
      return 2 + exact;
    }
    if (what.equals(toothClass)) {
      return 4 + exact;
    }
    return !tooth.primary() && what.equals(String.valueOf(tooth.position())) ? 6 + exact : -1;
  }
}
