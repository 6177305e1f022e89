package kerfwright.app.web.caseform;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.stack.UsualLayer;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.casework.Outline;
import kerfwright.practice.setting.CaseSetting;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** Forms filled in before anyone typed: the fresh one, and one from a case. */
public final class FilledForm {
  private FilledForm() {}

  /** A fresh form: what the practice has set, else every handpiece and the water guidance asks. */
  public static CaseForm fresh(CaseCatalogue catalogue, CaseSetting set) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    values.put("pulp", List.of("vital"));
    values.put(
        "coolant_ml_per_min",
        List.of(set.coolantMlPerMin().isEmpty() ? "50" : set.coolantMlPerMin()));
    List<String> all = catalogue.handpieces().stream().map(Handpiece::id).toList();
    List<String> own = set.handpieces().stream().filter(all::contains).toList();
    values.put("handpieces", own.isEmpty() ? all : own);
    return CaseForm.of(values);
  }

  /** What a case says; what was filled in is left out, so that it is filled in again. */
  public static CaseForm of(CutCase cutCase) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    values.put("procedure", List.of(cutCase.procedure().id()));
    values.put("tooth_pick", List.of(Integer.toString(cutCase.tooth().fdi())));
    put(values, cutCase, "case", "case", cutCase.reference());
    put(values, cutCase, "pulp", "pulp", cutCase.pulp().id());
    put(values, cutCase, "restoration", "restoration", cutCase.restoration());
    put(values, cutCase, "intended", "intended", cutCase.intended());
    Lesion lesion = cutCase.lesion();
    if (lesion != null) {
      Lesion.Texture texture = lesion.texture();
      put(values, cutCase, "lesion", "lesion_depth", lesion.depth().id());
      put(values, cutCase, "lesion", "lesion_activity", lesion.activity().id());
      put(values, cutCase, "lesion", "lesion_texture", texture == null ? null : texture.id());
    }
    ChamberDepth chamber = cutCase.condition().chamber();
    if (chamber != null && (chamber.known() == Known.FILM || chamber.known() == Known.USUAL)) {
      String depth = millimetres(chamber.below().typical());
      put(values, cutCase, "chamber", "chamber_depth_mm", depth);
      put(values, cutCase, "chamber", "chamber_known", chamber.known().id());
    }
    Keep keep = cutCase.keep();
    if (keep != null) {
      Length least = keep.atLeast();
      values.put("keep_material", List.of(keep.materialId()));
      values.put("keep_at_least_mm", List.of(least == null ? "all" : millimetres(least)));
    }
    Length finish = cutCase.finishRa();
    if (finish != null) {
      values.put("finish_ra_um", List.of(plain(finish.micrometres())));
    }
    values.put("handpieces", cutCase.handpieces().stream().map(Handpiece::id).toList());
    values.put("coolant_ml_per_min", List.of(plain(cutCase.coolant().millilitresPerMinute())));
    CaseForm form = CaseForm.of(values);
    if (cutCase.filled("outline").isEmpty()) {
      form = with(form, cutCase.outline());
    }
    return cutCase.stackFilledIn() ? form : form.withRows(rows(cutCase.layers()));
  }

  private static void put(
      Map<String, List<String>> values,
      CutCase cutCase,
      String field,
      String name,
      @Nullable String value) {
    if (value != null && cutCase.filled(field).isEmpty()) {
      values.put(name, List.of(value));
    }
  }

  /** A form with an outline. */
  static CaseForm with(CaseForm form, Outline outline) {
    return form.with("outline_shape", outline.shape().id())
        .with("outline_length_mm", millimetres(outline.length()))
        .with("outline_width_mm", millimetres(outline.width()));
  }

  /** Layers as rows of the form. */
  static List<CaseForm.LayerRow> rows(List<Layer> layers) {
    List<CaseForm.LayerRow> rows = new ArrayList<>();
    for (Layer layer : layers) {
      Range<Length> thickness = layer.thickness();
      boolean range = layer.known() == Known.RANGE && !thickness.isExact();
      // what is read on a bitewing is shown as it was read
      double told =
          layer.known() == Known.BITEWING
              ? thickness.high().millimetres()
              : thickness.typical().millimetres();
      rows.add(
          new CaseForm.LayerRow(
              rows.size(),
              layer.material().id(),
              range ? millimetres(thickness.low()) : "",
              plain(told),
              range ? millimetres(thickness.high()) : "",
              layer.known() == Known.RANGE ? "" : layer.known().id()));
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
              thickness == null ? "" : millimetres(thickness.high()),
              ""));
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
