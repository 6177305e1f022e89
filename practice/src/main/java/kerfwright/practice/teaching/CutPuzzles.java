package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.bench.Bench;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.WorkingPart;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/**
 * What the models of cutting, wear, shaft and heat answer: all at one head of 1.2 mm with 3 mm in
 * the work, 0.7 N, 9 m/s at the rim and plenty of water, unless told otherwise.
 */
final class CutPuzzles {
  private static final double HEAD_MM = 1.2;
  private static final Engagement CONTACT = new Engagement(HEAD_MM * 1e-3, 3e-3, 50e-6);
  private static final double LOAD_N = 0.7;
  private static final double RIM_M_PER_S = 9;
  private static final double WATER = 50;
  private static final double TOUCH_S = 4;
  private static final double LEAST_FACTOR = 1.2;

  private CutPuzzles() {}

  private static InstrumentProperties diamond(GritClass grit) {
    return Bench.tool(InstrumentKind.DIAMOND, grit, null, HEAD_MM, null);
  }

  private static InstrumentProperties bur(InstrumentKind kind, int blades) {
    return Bench.tool(kind, null, blades, HEAD_MM, null);
  }

  private static List<InstrumentProperties> tools() {
    List<InstrumentProperties> all = new ArrayList<>();
    Stream.of(GritClass.values()).map(CutPuzzles::diamond).forEach(all::add);
    for (int blades : List.of(4, 6, 8, 12, 16, 20, 30)) {
      all.add(bur(InstrumentKind.CARBIDE, blades));
    }
    for (int blades : List.of(6, 8)) {
      all.add(bur(InstrumentKind.STEEL, blades));
      all.add(bur(InstrumentKind.CERAMIC, blades));
      all.add(bur(InstrumentKind.POLYMER, blades));
    }
    return all;
  }

  private static Message words(InstrumentProperties tool) {
    GritClass grit = tool.grit();
    Message kind = Message.of("label.kind-" + tool.kind().id());
    Integer blades = tool.blades();
    return grit != null
        ? Message.of("learner.grit-and-kind", Message.of("label.grit-" + grit.id()), kind)
        : Message.of("learner.kind-and-blades", kind, blades == null ? 0 : blades);
  }

  private static CutResult cut(
      InstrumentProperties tool, Material material, double loadN, double waterMlPerMin) {
    OperatingPoint point = new OperatingPoint(loadN, RIM_M_PER_S, waterMlPerMin, 1, TOUCH_S);
    return Bench.part(tool).cut(material.typical(), CONTACT, point);
  }

  private static CutResult cut(InstrumentProperties tool, Material material) {
    return cut(tool, material, LOAD_N, WATER);
  }

  private static Material material(Random random) {
    List<Material> all = Materials.packaged().all();
    return all.get(random.nextInt(all.size()));
  }

  private static Message named(Material material) {
    return Message.of("label.material-" + material.id());
  }

  /** Which instrument takes a layer away fastest while it is sharp; a fifth lies between them. */
  static Puzzle<InstrumentProperties> fastest(Random random) {
    Material work = material(random);
    return Puzzle.greatest(
        Message.of("learner.ask-fastest", named(work)),
        some(tools(), 9, random),
        one -> Math.log(Math.max(1e-16, cut(one, work).removalM3PerS())),
        Math.log(LEAST_FACTOR),
        CutPuzzles::words,
        right ->
            Message.of(
                cut(right, work).brittleShare() > 0.5
                    ? "learner.why-fastest-cracks"
                    : "learner.why-fastest-flows",
                words(right),
                named(work)),
        random);
  }

  /** Of burs that differ in their blades alone, which bites deepest. */
  static Puzzle<Integer> deepestBite(Random random) {
    Material work = material(random);
    double load = 0.3 + random.nextInt(8) / 10.0;
    return Puzzle.greatest(
        Message.of("learner.ask-bite", named(work), Rounded.places(load, 1)),
        some(List.of(4, 6, 8, 10, 12, 16, 20, 24, 30, 40), 7, random),
        blades -> cut(bur(InstrumentKind.CARBIDE, blades), work, load, WATER).chipThicknessM(),
        0,
        blades -> Message.of("learner.blades", blades),
        right -> Message.of("learner.why-bite", right),
        random);
  }

  /** Which material costs an edge most for the same volume. */
  static Puzzle<Material> edgeWear(Random random) {
    int blades = List.of(4, 6, 8, 12).get(random.nextInt(4));
    WorkingPart bur = Bench.part(bur(InstrumentKind.CARBIDE, blades));
    return Puzzle.greatest(
        Message.of("learner.ask-wear", blades),
        some(Materials.packaged().all(), 9, random),
        one -> Math.log(Math.max(1e-9, bur.livesPerM3(one.typical(), RIM_M_PER_S))),
        Math.log(LEAST_FACTOR),
        CutPuzzles::named,
        right -> Message.of("learner.why-wear", named(right)),
        random);
  }

  private static <T> List<T> some(List<T> all, int count, Random random) {
    List<T> mixed = new ArrayList<>(all);
    Collections.shuffle(mixed, random);
    return mixed.subList(0, Math.min(count, mixed.size()));
  }

  /** The highest speed an instrument may be set to; 0 where the turbine must not turn it. */
  static Puzzle<Integer> speedLimit(Random random) {
    List<Handpiece> takes =
        Handpieces.all().stream().filter(one -> one.shank() == ShankType.FG).toList();
    Handpiece handpiece = takes.get(random.nextInt(takes.size()));
    double label = 20_000 * (3 + random.nextInt(20));
    double head = 0.8 + random.nextInt(13) / 10.0;
    Instrument diamond =
        Bench.fresh(
            Bench.tool(
                InstrumentKind.DIAMOND,
                GritClass.MEDIUM,
                null,
                head,
                RotationalSpeed.ofRpm(label)));
    int free = rpm(handpiece.drive().freeSpeed().rpm());
    int right = rpm(CandidateSearch.highestRpm(diamond, handpiece));
    List<Integer> pool = new ArrayList<>(List.of(0, rpm(label), free));
    for (double share : new double[] {0.25, 0.5, 0.75, 0.9, 1.25, 1.5}) {
      pool.add(rpm(label * share));
      pool.add(rpm(free * share));
    }
    Message in = Message.of("label.handpiece-" + handpiece.id());
    String why =
        right == 0
            ? "learner.why-speed-never"
            : right == rpm(label)
                ? "learner.why-speed-label"
                : right == free ? "learner.why-speed-handpiece" : "learner.why-speed-whirl";
    return new Puzzle<>(
        Message.of(
            "learner.ask-speed",
            Rounded.places(label, 0).toBigInteger().intValue(),
            in,
            free,
            Rounded.places(head, 1)),
        null,
        right,
        pool,
        one -> one == rpm(CandidateSearch.highestRpm(diamond, handpiece)),
        one -> Math.abs(one - right),
        one -> one == 0 ? Message.of("learner.never") : Message.of("learner.rpm", one),
        Message.of(why, rpm(label), in, free),
        Basis.COMMON_PRACTICE,
        List.of(SourceKey.COMMON_PRACTICE));
  }

  private static int rpm(double rpm) {
    return (int) (Math.floor(rpm / 1000 + 1e-6) * 1000);
  }

  /** One way to cut half a millimetre of dentine in ten seconds. */
  private record Way(double loadN, double waterMlPerMin, double dentineMm) {}

  /** Which way leaves the pulp wall warmest when the cut ends. */
  static Puzzle<Way> warmest(Random random) {
    List<Way> ways = new ArrayList<>();
    for (double load : new double[] {0.2, 0.4, 0.6, 0.8, 1.0, 1.2}) {
      for (double water : new double[] {0, 20, 30, 50}) {
        for (double left : new double[] {1.0, 1.5, 2.0, 3.0}) {
          ways.add(new Way(load, water, left));
        }
      }
    }
    InstrumentProperties tool =
        random.nextBoolean() ? bur(InstrumentKind.CARBIDE, 6) : diamond(GritClass.COARSE);
    Material dentine = Materials.packaged().get("dentine");
    return Puzzle.greatest(
        Message.of("learner.ask-warmest", words(tool)),
        some(ways, 9, random),
        way -> endK(way, tool, dentine),
        0.05,
        way ->
            Message.of(
                way.waterMlPerMin() == 0 ? "learner.way-dry" : "learner.way",
                Rounded.places(way.loadN(), 1),
                Rounded.places(way.waterMlPerMin(), 0),
                Rounded.places(way.dentineMm(), 1)),
        way -> Message.of(way.waterMlPerMin() == 0 ? "learner.why-warm-dry" : "learner.why-warm"),
        random);
  }

  private static double endK(Way way, InstrumentProperties tool, Material dentine) {
    double cutS = 10;
    double power = cut(tool, dentine, way.loadN(), way.waterMlPerMin()).powerW();
    PulpWall wall =
        new PulpWall(
            List.of(HeatLayer.of(way.dentineMm() + 0.5, dentine.typical())),
            9,
            way.waterMlPerMin());
    List<CutHeat> cuts = List.of(new CutHeat(cutS, TOUCH_S, 1, power, 0.5, 0));
    return wall.quick(new LayeredColumn(), cuts, HeatInputs.TYPICAL, 0.5).at(cutS + 2);
  }
}
