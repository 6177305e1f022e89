package kerfwright.app.web.caseform;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.Trait;

/** The rows of layers a form shows, and every place in it where a fault can stand. */
public final class CaseRows {
  private CaseRows() {}

  /** The rows as sent, also blank ones: a row just added is blank. */
  public static List<CaseForm.LayerRow> shown(CaseForm form) {
    return form.everyRow();
  }

  /** Whether a row is dentine under decay, which a bitewing shows too thick. */
  public static boolean underDecay(CaseForm form, int index) {
    List<CaseForm.LayerRow> rows = form.everyRow();
    return index > 0
        && has(rows.get(index), Trait.DENTINE)
        && has(rows.get(index - 1), Trait.CARIOUS);
  }

  private static boolean has(CaseForm.LayerRow row, Trait trait) {
    return Materials.packaged().find(row.material()).filter(one -> one.has(trait)).isPresent();
  }

  public static List<String> places(CaseForm form) {
    List<String> places = new ArrayList<>(FormNode.PLACES);
    form.everyRow().forEach(row -> places.add("layer-" + row.index()));
    return places;
  }
}
