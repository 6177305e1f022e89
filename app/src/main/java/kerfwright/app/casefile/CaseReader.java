package kerfwright.app.casefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Aim;
import kerfwright.planner.casework.AtHand;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.FilledIn;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.Basis;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * Turns the fields of a case into a {@link CutCase}, or into every fault they hold. File, form and
 * API all come through here.
 */
public final class CaseReader {
  private static final Bounds FINISH_RA = Bounds.from(0.01, 50, "micrometres");
  private static final Bounds WATER = Bounds.from(0, 500, "mL/min");

  private final CaseCatalogue catalogue;

  public CaseReader(CaseCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Reads a case; throws with all its faults. */
  public CutCase read(Node.Mapping top, String origin) throws BadInput {
    Faults faults = new Faults(origin);
    Fields fields = new Fields(top, "", faults);
    String reference = reference(fields);
    Procedure procedure = procedure(fields);
    Tooth tooth = new ToothField(catalogue).read(fields, faults);
    PulpState pulp = pulp(fields);
    String restoration = restoration(fields);
    LayerFields layerFields = new LayerFields(catalogue);
    List<Layer> layers = layerFields.stack(fields, faults);
    Keep keep = layerFields.keep(fields);
    Outline outline = OutlineField.read(fields);
    Length finishRa = goal(fields);
    List<Handpiece> handpieces = handpieces(fields, faults);
    Double water = fields.number("coolant_ml_per_min", WATER, true);
    fields.rejectUnknown();

    boolean filledIn = fields.optional("layers") == null;
    List<SourceKey> stackSources = List.of();
    if (filledIn && tooth != null && procedure != null && faults.none()) {
      UsualStack usual = catalogue.usualStack(tooth, procedure, restoration).orElse(null);
      layers = layerFields.usual(fields, usual);
      stackSources = usual == null ? List.of() : usual.sources();
    }
    if (keep != null && layers != null && !holds(layers, keep)) {
      fields.fault(
          "keep",
          Message.of("fault.keep-not-there", Message.of("label.material-" + keep.materialId())));
    }
    faults.throwIfAny();
    if (reference == null
        || procedure == null
        || tooth == null
        || layers == null
        || outline == null
        || water == null) {
      throw new IllegalStateException("A field of " + origin + " is missing without a fault");
    }
    return new CutCase(
        reference,
        procedure,
        tooth,
        new Condition(pulp, restoration, null, layers, null),
        new Aim(null, outline, keep, finishRa),
        new AtHand(handpieces, FlowRate.ofMillilitresPerMinute(water)),
        filledIn ? List.of(new FilledIn("layers", stackSources, Basis.DERIVED)) : List.of());
  }

  private static boolean holds(List<Layer> layers, Keep keep) {
    return layers.stream().anyMatch(layer -> layer.material().id().equals(keep.materialId()));
  }

  private static @Nullable String reference(Fields fields) {
    Message expected = Message.of("fault.case-reference");
    String text = fields.text("case", expected);
    if (text == null || text.matches("[\\p{L}\\p{N}._/#-]{1,40}")) {
      return text;
    }
    fields.fault(
        "case",
        Message.of(
            "fault.case-reference-wrong",
            expected,
            text.substring(0, Math.min(40, text.length()))));
    return null;
  }

  private static @Nullable Procedure procedure(Fields fields) {
    String id = fields.oneOf("procedure", "procedure", Procedure.ids(), true);
    return id == null ? null : new Procedure(id);
  }

  private static PulpState pulp(Fields fields) {
    List<String> ids = Arrays.stream(PulpState.values()).map(PulpState::id).toList();
    String id = fields.oneOf("pulp", "pulp state", ids, false);
    return Arrays.stream(PulpState.values())
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElse(PulpState.UNKNOWN);
  }

  private @Nullable String restoration(Fields fields) {
    List<String> ids =
        catalogue.restorations().stream().map(CaseCatalogue.Restoration::id).toList();
    return fields.oneOf("restoration", "restoration", ids, false);
  }

  private static @Nullable Length goal(Fields fields) {
    Fields goal = fields.fields("goal", Message.of("fault.goal"), false);
    if (goal == null) {
      return null;
    }
    Double roughness = goal.number("finish_ra_um", FINISH_RA, true);
    goal.rejectUnknown();
    return roughness == null ? null : Length.ofMicrometres(roughness);
  }

  private List<Handpiece> handpieces(Fields fields, Faults faults) {
    List<String> ids = catalogue.handpieces().stream().map(Handpiece::id).toList();
    Node node =
        fields.required("handpieces", Message.of("fault.handpieces", String.join(", ", ids)));
    List<Node> items = node == null ? null : fields.items("handpieces", node);
    List<Handpiece> found = new ArrayList<>();
    if (items == null) {
      return found;
    }
    if (items.isEmpty()) {
      fields.fault("handpieces", Message.of("fault.handpieces-none", String.join(", ", ids)));
    }
    for (int i = 0; i < items.size(); i++) {
      String path = "handpieces[" + i + "]";
      String id = Names.oneOf(path, items.get(i), "handpiece", ids, faults);
      for (Handpiece handpiece : catalogue.handpieces()) {
        if (handpiece.id().equals(id) && !found.contains(handpiece)) {
          found.add(handpiece);
        }
      }
    }
    return found;
  }
}
