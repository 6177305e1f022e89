package kerfwright.app.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.Contradiction;
import kerfwright.planner.casework.Contradictions;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.casework.UsualValues;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
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

  /** Reads a case; throws with all its faults. What it leaves open is filled in. */
  public CutCase read(Node.Mapping top, String origin) throws BadInput {
    Faults faults = new Faults(origin);
    Fields fields = new Fields(top, "", faults);
    NeighbourNotes told = told(fields, faults);
    fields.rejectUnknown();
    faults.throwIfAny();
    Procedure procedure = told.procedure();
    Tooth tooth = told.tooth();
    if (procedure != null && tooth != null) {
      Contradictions.onTooth(procedure, tooth).ifPresent(one -> add(faults, fields, one));
      faults.throwIfAny();
    }
    CutCase read = completed(told, fields);
    faults.throwIfAny();
    if (read == null) {
      throw new IllegalStateException("A field of " + origin + " is missing without a fault");
    }
    Contradictions.of(read).forEach(one -> add(faults, fields, one));
    faults.throwIfAny();
    return read;
  }

  private static void add(Faults faults, Fields fields, Contradiction one) {
    faults.addFixable(line(fields, one.field()), one.field(), one.message(), one.fix());
  }

  /** What a case says; a field it does not hold is null. */
  private record NeighbourNotes(
      @Nullable String reference,
      @Nullable Procedure procedure,
      @Nullable Tooth tooth,
      @Nullable PulpState pulp,
      Mouth mouth,
      @Nullable Keep keep,
      @Nullable Outline outline,
      @Nullable Length finishRa,
      List<Handpiece> handpieces,
      @Nullable FlowRate water) {}

  /** What it says of restorations, decay and layers. */
  private record Mouth(
      @Nullable String restoration,
      @Nullable String intended,
      @Nullable Lesion lesion,
      @Nullable List<Layer> layers,
      @Nullable ChamberDepth chamber) {}

  private NeighbourNotes told(Fields fields, Faults faults) {
    String reference = reference(fields);
    Procedure procedure = procedure(fields);
    Tooth tooth = new ToothField(catalogue).read(fields, faults);
    PulpState pulp = fields.oneOf("pulp", "pulp-state", PulpState.class, false);
    Known known = KnownField.read(fields, Known.FILM);
    String restoration = restoration(fields);
    String intended = fields.oneOf("intended", "intended-restoration", catalogue.intended(), false);
    Lesion lesion = LesionField.read(fields);
    LayerFields layerFields = new LayerFields(catalogue);
    Mouth mouth =
        new Mouth(
            restoration,
            intended,
            lesion,
            layerFields.stack(fields, faults, known),
            ChamberField.read(fields, faults, known));
    Keep keep = layerFields.keep(fields);
    Outline outline = OutlineField.read(fields);
    Length finishRa = goal(fields);
    List<Handpiece> handpieces = handpieces(fields, faults);
    Double water = fields.number("coolant_ml_per_min", WATER, false);
    return new NeighbourNotes(
        reference,
        procedure,
        tooth,
        pulp,
        mouth,
        keep,
        outline,
        finishRa,
        handpieces,
        water == null ? null : FlowRate.ofMillilitresPerMinute(water));
  }

  /** The case with usual values where it is open; null after a fault. */
  private @Nullable CutCase completed(NeighbourNotes told, Fields fields) {
    Procedure procedure = told.procedure();
    Tooth tooth = told.tooth();
    if (procedure == null || tooth == null) {
      return null;
    }
    UsualValues usual = new UsualValues(procedure, tooth);
    List<Layer> layersTold = told.mouth().layers();
    String reference = usual.reference(told.reference());
    PulpState pulp = usual.pulp(told.pulp());
    String restoration = usual.restoration(told.mouth().restoration(), layersTold != null);
    Lesion lesion = usual.lesion(told.mouth().lesion(), layersTold);
    List<Layer> layers =
        layersTold == null ? null : usual.published(layersTold, restoration, lesion);
    if (layersTold == null) {
      UsualStack stack = usual.stack(restoration, lesion).orElse(null);
      if (!LayerFields.complete(fields, stack)) {
        return null;
      }
      layers = usual.layers(Objects.requireNonNull(stack), told.mouth().chamber());
    }
    if (layers == null || !kept(told.keep(), layers, fields)) {
      return null;
    }
    ChamberDepth chamber = usual.chamber(told.mouth().chamber(), layersTold);
    String intended = usual.intended(told.mouth().intended());
    Condition condition = new Condition(pulp, restoration, lesion, layers, chamber);
    Outline outline = usual.outline(told.outline(), condition, intended);
    if (outline == null) {
      fields.required("outline", Message.of("fault.outline"));
      return null;
    }
    AtHand atHand = usual.atHand(told.handpieces(), told.water());
    return new CutCase(
        reference,
        procedure,
        tooth,
        condition,
        new Aim(intended, outline, told.keep(), told.finishRa()),
        atHand,
        usual.filledIn());
  }

  private static boolean kept(@Nullable Keep keep, List<Layer> layers, Fields fields) {
    if (keep == null
        || layers.stream().anyMatch(layer -> layer.material().id().equals(keep.materialId()))) {
      return true;
    }
    fields.fault(
        "keep",
        Message.of("fault.keep-not-there", Message.of("label.material-" + keep.materialId())));
    return false;
  }

  /** Line of the field a contradiction is about, also of one within a layer. */
  private static int line(Fields fields, String field) {
    return fields.line(field.replaceFirst("[\\[.].*", ""));
  }

  private static @Nullable String reference(Fields fields) {
    Message expected = Message.of("fault.case-reference");
    String text = fields.optional("case") == null ? null : fields.text("case", expected);
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

  private @Nullable Procedure procedure(Fields fields) {
    String id = fields.oneOf("procedure", "procedure", catalogue.procedures(), true);
    return id == null ? null : new Procedure(id);
  }

  private @Nullable String restoration(Fields fields) {
    return fields.oneOf("restoration", "restoration", catalogue.restorations(), false);
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
    Node node = fields.optional("handpieces");
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
