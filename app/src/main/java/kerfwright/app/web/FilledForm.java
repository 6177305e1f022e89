package kerfwright.app.web;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.stack.UsualLayer;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.practice.setting.CaseSetting;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/** Forms filled in before anyone typed: the fresh one, and one from a case. */
final class FilledForm {
  private FilledForm() {}

  /** A fresh form: what the practice has set, else every handpiece and the water guidance asks. */
  static CaseForm fresh(CaseCatalogue catalogue, CaseSetting set) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    values.put("pulp", List.of("vital"));
    values.put("outline_shape", List.of("ellipse"));
    values.put(
        "coolant_ml_per_min",
        List.of(set.coolantMlPerMin().isEmpty() ? "50" : set.coolantMlPerMin()));
    List<String> all = catalogue.handpieces().stream().map(Handpiece::id).toList();
    List<String> own = set.handpieces().stream().filter(all::contains).toList();
    values.put("handpieces", own.isEmpty() ? all : own);
    return CaseForm.of(values);
  }

  static CaseForm of(CutCase cutCase) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    values.put("case", List.of(cutCase.reference()));
    values.put("procedure", List.of(cutCase.procedure().id()));
    values.put("tooth_pick", List.of(Integer.toString(cutCase.tooth().fdi())));
    values.put("pulp", List.of(cutCase.pulp().id()));
    if (cutCase.restoration() != null) {
      values.put("restoration", List.of(cutCase.restoration()));
    }
    Keep keep = cutCase.keep();
    if (keep != null) {
      Length least = keep.atLeast();
      values.put("keep_material", List.of(keep.materialId()));
      values.put("keep_at_least_mm", List.of(least == null ? "all" : millimetres(least)));
    }
    Outline outline = cutCase.outline();
    values.put("outline_shape", List.of(outline.shape().id()));
    values.put("outline_length_mm", List.of(millimetres(outline.length())));
    values.put("outline_width_mm", List.of(millimetres(outline.width())));
    Length finish = cutCase.finishRa();
    if (finish != null) {
      values.put("finish_ra_um", List.of(plain(finish.micrometres())));
    }
    values.put("handpieces", cutCase.handpieces().stream().map(Handpiece::id).toList());
    values.put("coolant_ml_per_min", List.of(plain(cutCase.coolant().millilitresPerMinute())));
    CaseForm form = CaseForm.of(values);
    return cutCase.stackFilledIn() ? form : form.withRows(rows(cutCase.layers()));
  }

  /** Layers as rows of the form. */
  static List<CaseForm.LayerRow> rows(List<Layer> layers) {
    List<CaseForm.LayerRow> rows = new ArrayList<>();
    for (Layer layer : layers) {
      boolean exact = layer.thickness().isExact();
      rows.add(
          new CaseForm.LayerRow(
              rows.size(),
              layer.material().id(),
              exact ? "" : millimetres(layer.thickness().low()),
              millimetres(layer.thickness().typical()),
              exact ? "" : millimetres(layer.thickness().high())));
    }
    return rows;
  }

  /** The usual layers as rows; a thickness nobody knows stays blank. */
  static List<CaseForm.LayerRow> rows(UsualStack usual) {
    List<CaseForm.LayerRow> rows = new ArrayList<>();
    for (UsualLayer layer : usual.layers()) {
      Range<Length> thickness = layer.thickness();
      rows.add(
          new CaseForm.LayerRow(
              rows.size(),
              layer.materialId(),
              thickness == null ? "" : millimetres(thickness.low()),
              thickness == null ? "" : millimetres(thickness.typical()),
              thickness == null ? "" : millimetres(thickness.high())));
    }
    return rows;
  }

  private static String millimetres(Length length) {
    return plain(length.millimetres());
  }

  private static String plain(double value) {
    BigDecimal rounded = new BigDecimal(value).setScale(4, java.math.RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
