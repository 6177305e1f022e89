package kerfwright.app.web.caseform;

import java.util.List;
import java.util.Objects;
import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.app.input.Node;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.casework.UsualValues;
import org.jspecify.annotations.Nullable;

/** Fills the form in with what is usual for tooth and procedure, where nobody has typed. */
public final class Prefill {
  private final CaseCatalogue catalogue;

  public Prefill(CaseCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The form filled in; as it is while tooth or procedure are not known. */
  public CaseForm of(CaseForm form) {
    Tooth tooth = tooth(form);
    String id = form.value("procedure");
    if (tooth == null || !catalogue.procedures().contains(id)) {
      return form;
    }
    UsualValues usual = new UsualValues(new Procedure(id), tooth);
    boolean layersTyped = !FieldGroup.LAYERS.untouched(form);
    CaseForm filled = form;
    String restoration = form.value("restoration").isEmpty() ? null : form.value("restoration");
    if (FieldGroup.RESTORATION.untouched(form)) {
      restoration = usual.restoration(null, layersTyped);
      filled =
          FieldGroup.RESTORATION.marked(
              filled.with("restoration", Objects.requireNonNullElse(restoration, "")));
    }
    if (FieldGroup.INTENDED.untouched(form)) {
      String intended = usual.intended(null);
      filled =
          FieldGroup.INTENDED.marked(
              filled.with("intended", Objects.requireNonNullElse(intended, "")));
    }
    Lesion lesion = lesion(form, usual);
    if (FieldGroup.LESION.untouched(form)) {
      filled =
          FieldGroup.LESION.marked(
              filled
                  .with("lesion_depth", lesion == null ? "" : lesion.depth().id())
                  .with("lesion_activity", lesion == null ? "" : lesion.activity().id())
                  .with("lesion_texture", ""));
    }
    return opening(layers(filled, usual, restoration, lesion), usual, restoration, lesion);
  }

  private static @Nullable Lesion lesion(CaseForm form, UsualValues usual) {
    if (!FieldGroup.LESION.untouched(form)) {
      for (Lesion.Depth depth : Lesion.Depth.values()) {
        if (depth.id().equals(form.value("lesion_depth"))) {
          return new Lesion(depth, Lesion.Activity.ACTIVE, null);
        }
      }
    }
    return usual.lesion(null, null);
  }

  private CaseForm layers(
      CaseForm form, UsualValues usual, @Nullable String restoration, @Nullable Lesion lesion) {
    if (!FieldGroup.LAYERS.untouched(form) || !known(restoration)) {
      return form;
    }
    List<CaseForm.LayerRow> rows =
        usual.stack(restoration, lesion).map(FilledForm::rows).orElse(List.of());
    return FieldGroup.LAYERS.marked(form.withRows(rows));
  }

  private CaseForm opening(
      CaseForm form, UsualValues usual, @Nullable String restoration, @Nullable Lesion lesion) {
    if (!FieldGroup.OUTLINE.untouched(form) || !known(restoration)) {
      return form;
    }
    List<Layer> layers =
        usual
            .stack(restoration, lesion)
            .filter(UsualStack::complete)
            .map(stack -> usual.layers(stack, null))
            .orElse(List.of());
    String intended = form.value("intended").isEmpty() ? null : form.value("intended");
    Outline outline =
        layers.isEmpty()
            ? null
            : usual.outline(
                null,
                new Condition(PulpState.UNKNOWN, restoration, lesion, layers, null),
                intended);
    return outline == null ? form : FieldGroup.OUTLINE.marked(FilledForm.with(form, outline));
  }

  private boolean known(@Nullable String restoration) {
    return restoration == null || catalogue.restorations().contains(restoration);
  }

  private @Nullable Tooth tooth(CaseForm form) {
    if (TypedTooth.node(form) instanceof Node.Mapping typed) {
      for (var entry : typed.entries().entrySet()) {
        if (entry.getValue().value() instanceof Node.Scalar text) {
          return catalogue.tooth(entry.getKey(), text.text()).orElse(null);
        }
      }
    }
    return null;
  }
}
