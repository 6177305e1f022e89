package kerfwright.planner.evidence.figure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import kerfwright.catalogue.evidence.Condition;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.cutting.AbrasiveTool;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Drive;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.wear.EdgeDulling;
import kerfwright.physics.wear.GrainDulling;
import kerfwright.physics.wear.Sharpness;
import kerfwright.physics.wear.WearConstants;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.WorkingPart;
import kerfwright.planner.uncertainty.Against;
import kerfwright.planner.uncertainty.Draw;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * A published test as the models see it in one draw: every condition somewhere in its range, the
 * instrument built and the cut computed as for a plan.
 */
public final class Trial {
  /** A weak drive may stall in a draw; it then creeps, as in the samples of a plan. */
  private static final double CREEP = 0.1;

  private static final double HEAD_LENGTH_MM = 6;
  private static final double LEAST_SHARPNESS = 0.05;

  /** Enough that the volume is met to a millionth. */
  private static final int HALVINGS = 20;

  /** Of the time a bur cuts. */
  private static final int STEPS = 40;

  /** Of tests that do not tell, so many are taken to have started at the room's temperature. */
  private static final double ROOM_SHARE = 0.5;

  private final SetUp setUp;
  private final Draw draw;
  private @Nullable WorkingPart part;
  private boolean fromTheRoom;
  private final Map<ConditionKind, Double> values = new EnumMap<>(ConditionKind.class);

  private Trial(SetUp setUp, Draw draw) {
    this.setUp = setUp;
    this.draw = draw;
  }

  /** A test with every condition at its typical value. */
  public static Trial typical(SetUp setUp, Draw draw) {
    Trial trial = new Trial(setUp, draw);
    for (Condition condition : setUp.ordered()) {
      trial.values.put(condition.kind(), condition.typical());
    }
    return trial;
  }

  /** A test with each condition drawn by its kind, so that two set-ups of a draw share them. */
  public static Trial drawn(SetUp setUp, Draw draw) {
    return drawn(setUp, draw, kind -> draw.share("condition " + kind.id()));
  }

  /** A test with each condition at a share of its range. */
  public static Trial drawn(SetUp setUp, Draw draw, ToDoubleFunction<ConditionKind> shares) {
    Trial trial = new Trial(setUp, draw);
    for (Condition c : setUp.ordered()) {
      double share = shares.applyAsDouble(c.kind());
      if (c.kind() == ConditionKind.ROOM_START) {
        trial.fromTheRoom = share < ROOM_SHARE;
        share = Math.min(1, share / ROOM_SHARE);
      }
      trial.values.put(c.kind(), Draw.triangular(c.low(), c.typical(), c.high(), share));
    }
    return trial;
  }

  public Draw draw() {
    return draw;
  }

  boolean has(ConditionKind kind) {
    return values.containsKey(kind);
  }

  /** A condition of the test, in the unit of its kind. */
  public double of(ConditionKind kind) {
    Double value = values.get(kind);
    return value == null ? setUp.get(kind).typical() : value;
  }

  /** Temperature of the tooth at the start: told, or of bath or room; typically of the bath. */
  double startC() {
    return of(fromTheRoom ? ConditionKind.ROOM_START : ConditionKind.BODY_TEMPERATURE);
  }

  private Material material(String id) {
    return Materials.packaged().get(id);
  }

  /** What is cut. */
  public Substance work() {
    return draw.substance(material(setUp.work()));
  }

  /** The outermost layer. */
  Substance cover() {
    return draw.substance(material(setUp.cover()));
  }

  Substance dentine() {
    return draw.substance(material("dentine"));
  }

  /** The working part, new. */
  public WorkingPart part() {
    WorkingPart built = part;
    if (built == null) {
      built = build();
      part = built;
    }
    return built;
  }

  private WorkingPart build() {
    boolean carbide = setUp.tool() == SetUp.Tool.CARBIDE;
    InstrumentProperties properties =
        new InstrumentProperties(
            carbide ? InstrumentKind.CARBIDE : InstrumentKind.DIAMOND,
            null,
            null,
            ShapeFamily.TAPER_ROUND_END,
            ShapeFamily.TAPER_ROUND_END.label(),
            carbide ? null : GritClass.MEDIUM,
            carbide ? (int) Math.round(of(ConditionKind.BLADES)) : null,
            false,
            Length.ofMillimetres(of(ConditionKind.DIAMETER)),
            Length.ofMillimetres(HEAD_LENGTH_MM),
            ShankType.FG,
            Length.ofMillimetres(19),
            null,
            List.of());
    Instrument instrument =
        Instrument.of(
            new DrawerInstrument(setUp.id(), properties, 0, 0, DrawerInstrument.State.CLEAN));
    if (instrument == null) {
      throw new IllegalStateException("Set-up '" + setUp.id() + "' has no working part");
    }
    if (instrument.part() instanceof AbrasivePart part) {
      AbrasiveTool usual = part.tool();
      AbrasiveTool own =
          new AbrasiveTool(
              of(ConditionKind.GRAIN) * 1e-6,
              usual.protrusionShare(),
              usual.grainHardnessPa(),
              usual.rigidity(),
              has(ConditionKind.RUN_OUT) ? of(ConditionKind.RUN_OUT) * 1e-6 : usual.runOutM());
      return new AbrasivePart(own, part.reserveLayers(), 0, 1);
    }
    return instrument.part();
  }

  /** Speed under the load of the test, rpm. */
  public double rpm() {
    double set = of(ConditionKind.SPEED);
    if (setUp.handpiece().isEmpty()) {
      return set;
    }
    Drive drive = Handpieces.byId(setUp.handpiece()).orElseThrow().drive();
    double armM = of(ConditionKind.DIAMETER) * 1e-3 / 2;
    Torque torque =
        new Torque(
            part().forceRatio(work(), contact(), of(ConditionKind.LOAD))
                * of(ConditionKind.LOAD)
                * armM);
    double rpm = drive.speedUnder(torque, RotationalSpeed.ofRpm(set)).rpm();
    return rpm > 0 ? rpm : CREEP * set;
  }

  Drive drive() {
    return Handpieces.byId(setUp.handpiece()).orElseThrow().drive();
  }

  double rimMPerS() {
    return Math.PI * of(ConditionKind.DIAMETER) * 1e-3 * rpm() / 60;
  }

  /** How the head meets the work. */
  public Engagement contact() {
    return new Engagement(
        of(ConditionKind.DIAMETER) * 1e-3,
        of(ConditionKind.ENGAGED) * 1e-3,
        of(ConditionKind.DEPTH_OF_CUT) * 1e-6);
  }

  /** Lives of the working part used for a volume of the work, 1/m3. */
  public double livesPerM3() {
    return part().livesPerM3(work(), rimMPerS());
  }

  /** What the sterilisations of the test leave of its cut. */
  double afterSterilising() {
    return afterSterilising(
        has(ConditionKind.STERILISATIONS) ? (int) of(ConditionKind.STERILISATIONS) : 0);
  }

  double afterSterilising(int cycles) {
    return part() instanceof AbrasivePart
        ? Sharpness.ofDiamondAfterCycles(cycles)
        : Sharpness.ofCarbideAfterCycles(cycles);
  }

  /** Sharpness at the start of the test. */
  double sharpness() {
    return Math.max(LEAST_SHARPNESS, afterSterilising() * after(livesBefore()));
  }

  /** What a share of its life leaves of the cut of the working part when new. */
  private double after(double lives) {
    return part() instanceof AbrasivePart grains
        ? GrainDulling.after(WearConstants.TYPICAL, grains.tool().grainSizeM(), lives)
        : EdgeDulling.after(lives);
  }

  /** Share of its cut a working part loses while a volume is removed, after what it cut before. */
  double lossOver(double volumeM3) {
    double before = livesBefore();
    return 1 - after(before + volumeM3 * livesPerM3()) / after(before);
  }

  private double livesBefore() {
    return livesPerM3() * (has(ConditionKind.CUT_BEFORE) ? of(ConditionKind.CUT_BEFORE) * 1e-9 : 0);
  }

  /** How it is run. */
  public OperatingPoint point() {
    return new OperatingPoint(
        of(ConditionKind.LOAD),
        rimMPerS(),
        of(ConditionKind.WATER),
        sharpness(),
        has(ConditionKind.CONTACT) ? of(ConditionKind.CONTACT) : Double.POSITIVE_INFINITY);
  }

  /** The cut at the start of the test. */
  public CutResult cut() {
    return part().cut(work(), contact(), point());
  }

  /** Removal rate at the start of the test, with the model's factor of the draw, m3/s. */
  public double removalM3PerS() {
    double factor = part() instanceof AbrasivePart ? draw.abrasiveFactor() : draw.bladedFactor();
    return Math.max(1e-15, cut().removalM3PerS() * factor);
  }

  /** What the rate lies off the models in the draw, as a logarithm. */
  double rateOff() {
    return draw.off(Against.rate(part()), setUp.id());
  }

  /** Volume removed in a time while the working part blunts. */
  public double volumeM3(double seconds) {
    return part() instanceof AbrasivePart grains
        ? ofGrainsM3(grains.tool().grainSizeM(), seconds)
        : ofBladesM3(seconds);
  }

  /** The rate of grains follows their sharpness: the time for a volume in closed form, halved. */
  private double ofGrainsM3(double grainSizeM, double seconds) {
    double rate = removalM3PerS();
    double lives = livesPerM3();
    double before = livesBefore();
    double now = GrainDulling.after(WearConstants.TYPICAL, grainSizeM, before);
    double low = 0;
    double high = rate * seconds;
    for (int i = 0; i < HALVINGS; i++) {
      double volume = (low + high) / 2;
      double slow =
          now * GrainDulling.slowness(WearConstants.TYPICAL, grainSizeM, before, volume * lives);
      if (slow > rate * seconds * lives) {
        high = volume;
      } else {
        low = volume;
      }
    }
    return (low + high) / 2;
  }

  /** A blunt edge lifts less of a chip but cracks brittle work as before: step by step. */
  private double ofBladesM3(double seconds) {
    double lives = livesPerM3();
    double before = livesBefore();
    double step = seconds / STEPS;
    double volume = 0;
    for (int i = 0; i < STEPS; i++) {
      double half = volume + step / 2 * bladedM3PerS(before + volume * lives);
      volume += step * bladedM3PerS(before + half * lives);
    }
    return volume;
  }

  private double bladedM3PerS(double lives) {
    OperatingPoint now = point();
    double sharp = Math.max(LEAST_SHARPNESS, afterSterilising() * EdgeDulling.after(lives));
    OperatingPoint then =
        new OperatingPoint(
            now.loadN(), now.rimSpeedMPerS(), now.coolantMlPerMin(), sharp, now.touchS());
    return part().cut(work(), contact(), then).removalM3PerS() * draw.bladedFactor();
  }
}
