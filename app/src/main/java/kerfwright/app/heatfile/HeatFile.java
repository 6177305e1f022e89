package kerfwright.app.heatfile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.app.input.SourceText;
import kerfwright.app.input.TreeReader;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatProblem;
import kerfwright.physics.heat.field.Resolution;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Reads a heat problem from a YAML file, or says everything that is wrong with it. */
public final class HeatFile {
  private static final Bounds TEMPERATURE = Bounds.from(-50, 500, "degC");
  private static final Bounds SIZE = Bounds.above(0, 1000, "mm");
  private static final Bounds PLACE = Bounds.from(0, 1000, "mm");
  private static final Bounds DURATION = Bounds.above(0, 36_000, "s");
  private static final Bounds EVERY = Bounds.from(0.0001, 36_000, "s");
  private static final Bounds ERROR = Bounds.from(0.0001, 100, "K");
  private static final Bounds CELLS = Bounds.from(4, 4000, "");
  private static final Bounds STEP = Bounds.from(0.00001, 1000, "s");
  private static final int MOST_OUTPUTS = 200_000;
  private static final int MOST_PROBES = 100;
  private static final int MOST_STROKES = 20_000;
  private static final double MOST_WORK = 3e9;
  private static final double USUAL_ERROR_K = 0.05;

  private final Faults faults;

  private HeatFile(String origin) {
    this.faults = new Faults(origin);
  }

  public static HeatProblem read(Path file) throws BadInput {
    return read(SourceText.of(file));
  }

  public static HeatProblem read(SourceText source) throws BadInput {
    return new HeatFile(source.origin()).problem(source);
  }

  private HeatProblem problem(SourceText source) throws BadInput {
    Fields fields = new Fields(TreeReader.yaml(source), "", faults);
    Double radius = fields.number("radius_mm", SIZE, true);
    List<HeatLayer> layers = HeatLayers.read(fields, faults);
    Double initial = fields.number("initial_c", TEMPERATURE, true);
    Face bottom = bottom(fields);
    Double duration = fields.number("duration_s", DURATION, true);
    Double every = fields.number("output_every_s", EVERY, true);
    HeatTop top = HeatTop.read(fields);
    List<HeatProbe> probes = probes(fields);
    Resolution resolution = resolution(fields);
    fields.rejectUnknown();
    if (duration != null && every != null && duration / every > MOST_OUTPUTS) {
      fields.fault("output_every_s", Message.of("heat.too-many-outputs", MOST_OUTPUTS));
    }
    budget(fields, duration, top, resolution);
    faults.throwIfAny();
    if (radius == null
        || initial == null
        || bottom == null
        || duration == null
        || every == null
        || top == null
        || resolution == null) {
      throw new IllegalStateException("A field is missing without a fault");
    }
    HeatBody body = HeatBody.of(radius, layers, initial, bottom);
    checkPlaces(fields, body, probes, top, duration);
    return new HeatProblem(body, top.schedule(duration), every, probes, resolution);
  }

  /** Work is counted before it is begun. */
  private void budget(
      Fields fields,
      @Nullable Double duration,
      @Nullable HeatTop top,
      @Nullable Resolution resolution) {
    if (duration == null) {
      return;
    }
    if (top != null && duration / (top.onS() + top.offS()) > MOST_STROKES) {
      fields.fault("top", Message.of("heat.too-many-strokes", MOST_STROKES));
    }
    if (resolution instanceof Resolution.On given) {
      HeatMesh mesh = given.mesh();
      double work = (double) mesh.cellsR() * mesh.cellsZ() * duration / mesh.stepS();
      if (work > MOST_WORK) {
        fields.fault("mesh", Message.of("heat.too-much-work", short2(work), short2(MOST_WORK)));
      }
    }
  }

  private static BigDecimal figure(double value) {
    return BigDecimal.valueOf(value);
  }

  private static BigDecimal short2(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(2));
  }

  private void checkPlaces(
      Fields fields, HeatBody body, List<HeatProbe> probes, HeatTop top, double duration)
      throws BadInput {
    for (int i = 0; i < probes.size(); i++) {
      HeatProbe probe = probes.get(i);
      if (probe.rMm() > body.radiusMm() || probe.zMm() > body.depthMm()) {
        String where = "probes_mm[" + i + "]";
        faults.add(
            fields.line("probes_mm"),
            where,
            Message.of("heat.probe-outside", figure(body.radiusMm()), figure(body.depthMm())));
      }
    }
    if (top.spotRadiusMm() >= body.radiusMm()) {
      fields.fault("top", Message.of("heat.spot-too-large", figure(body.radiusMm())));
    }
    if (top.schedule(duration).cutDepthMm() >= body.depthMm()) {
      fields.fault("top", Message.of("heat.cuts-through"));
    }
    faults.throwIfAny();
  }

  private @Nullable Face bottom(Fields fields) {
    Message expected = Message.of("heat.bottom");
    Node node = fields.required("bottom", expected);
    if (node == null) {
      return null;
    }
    if (node instanceof Node.Scalar scalar && scalar.text().strip().equals("insulated")) {
      return Face.insulated();
    }
    Fields below = fields.fields("bottom", expected, true);
    if (below == null) {
      return null;
    }
    Double held = below.number("temperature_c", TEMPERATURE, true);
    below.rejectUnknown();
    return held == null ? null : Face.held(held);
  }

  private List<HeatProbe> probes(Fields fields) {
    List<HeatProbe> probes = new ArrayList<>();
    Node node = fields.required("probes_mm", Message.of("heat.probes"));
    List<Node> items = node == null ? null : fields.items("probes_mm", node);
    if (items == null) {
      return probes;
    }
    if (items.isEmpty() || items.size() > MOST_PROBES) {
      fields.fault("probes_mm", Message.of("heat.probe-count", MOST_PROBES));
    }
    for (int i = 0; i < items.size(); i++) {
      String path = "probes_mm[" + i + "]";
      if (items.get(i) instanceof Node.Mapping mapping) {
        Fields probe = new Fields(mapping, path, faults);
        Double r = probe.number("r", PLACE, true);
        Double z = probe.number("z", PLACE, true);
        probe.rejectUnknown();
        if (r != null && z != null) {
          probes.add(new HeatProbe(r, z));
        }
      } else {
        Node found = items.get(i);
        faults.add(found.line(), path, Message.of("fault.must-be", "{r, z}", found.found()));
      }
    }
    return probes;
  }

  private @Nullable Resolution resolution(Fields fields) {
    Fields mesh = fields.fields("mesh", Message.of("heat.mesh"), false);
    Double error = fields.number("error_k", ERROR, false);
    if (mesh == null) {
      return Resolution.withinK(error == null ? USUAL_ERROR_K : error);
    }
    if (error != null) {
      fields.fault("error_k", Message.of("fault.beside", "mesh"));
    }
    Double cellsR = mesh.number("cells_r", CELLS, true);
    Double cellsZ = mesh.number("cells_z", CELLS, true);
    Double step = mesh.number("step_s", STEP, true);
    mesh.rejectUnknown();
    if (cellsR == null || cellsZ == null || step == null) {
      return null;
    }
    if (cellsR != Math.rint(cellsR) || cellsZ != Math.rint(cellsZ)) {
      fields.fault("mesh", Message.of("heat.whole-cells"));
      return null;
    }
    if (cellsR * cellsZ > 4e6) {
      fields.fault("mesh", Message.of("heat.too-many-cells"));
      return null;
    }
    return Resolution.on(HeatMesh.even(cellsR.intValue(), cellsZ.intValue(), step));
  }
}
