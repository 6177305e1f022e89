package kerfwright.app.reference;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Say;
import kerfwright.catalogue.evidence.EvidenceRow;

/** How a published finding is shown; what the authors wrote stays as they wrote it. */
public final class EvidenceShown {
  private EvidenceShown() {}

  public static String category(Say say, String id) {
    return say.at("reference.category-" + id);
  }

  /** What the program uses it for. */
  public static String role(Say say, EvidenceRow row) {
    return say.at("reference.role-" + row.role().id());
  }

  /** Work, load, speed, water and further conditions as told. */
  public static String conditions(EvidenceRow row) {
    List<String> parts = new ArrayList<>(List.of(row.workMaterial()));
    add(parts, "load ", row.load(), " N");
    add(parts, "", row.speed(), " per min");
    add(parts, "water ", row.coolant(), " mL/min");
    add(parts, "", row.conditions(), "");
    add(parts, "", row.locator(), "");
    return String.join("; ", parts);
  }

  private static void add(List<String> parts, String before, String told, String after) {
    if (!told.isBlank()) {
      parts.add(before + told + after);
    }
  }
}
