package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.cut.ChipDrawing;
import kerfwright.app.drawing.cut.GrainDrawing;
import kerfwright.app.drawing.cut.GrainDrawing.Phase;
import kerfwright.app.drawing.cut.ThresholdDrawing;
import kerfwright.app.drawing.instrument.AbrasiveSurface;
import kerfwright.app.drawing.instrument.FluteDrawing;
import kerfwright.app.drawing.instrument.GritDrawing;
import kerfwright.app.teaching.Lecture.Frame;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.physics.cutting.ChipGeometry;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.GrainMark;
import kerfwright.physics.cutting.StrokeForces;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import kerfwright.planner.bench.Bench;

/** A topic out of the models. */
record Lectures(Say say, Topic topic, Scene scene) {
  static final int[] BLADES = {4, 8, 12, 30};

  /** Travel of the hand that all burs share, m/s: a project setting without a source. */
  static final double FEED_M_PER_S = 1e-3;

  /** Share of a grain's size that stands out of a galvanic bond, as in the models. */
  private static final double PROTRUSION = 0.4;

  private static final int ARC_POINTS = 41;

  static Lecture of(Say say, Topic topic, Scene scene) {
    Lectures all = new Lectures(say, topic, scene);
    return switch (topic) {
      case PRESSED -> all.pressed();
      case PLOUGHED -> all.ploughed();
      case CHIP -> all.chip();
      case FLUTES -> all.flutes();
      case GRITS -> all.grits();
      case THRESHOLD -> all.threshold();
    };
  }

  private Lecture lecture(List<Frame> frames, List<List<String>> rows, Object... figures) {
    return new Lecture(topic, scene, frames, rows, say.at("teaching.said-" + topic.id(), figures));
  }

  private Frame frame(int number, String svg, Object... figures) {
    String key = "teaching." + topic.id() + "-" + number;
    return new Frame(svg, say.at(key), say.at(key + "-says", figures));
  }

  private String layer() {
    return Labels.materialWithin(say, scene.bench().layer().id());
  }

  private String um(double metres) {
    return TwoDigits.of(say, metres * 1e6);
  }

  private String nm(double metres) {
    return TwoDigits.of(say, metres * 1e9);
  }

  private String plain(double value) {
    return TwoDigits.of(say, value);
  }

  /** A grain of a brittle layer: touches, sinks in, cracks, and the chip comes off. */
  private Lecture pressed() {
    double threshold = CrackThreshold.loadN(scene.bench().layer().typical());
    GrainMark below = mark(threshold / 2);
    GrainMark above = mark(threshold * 2);
    double window = GrainDrawing.windowUm(above);
    String load = plain(above.loadN());
    String crack = um(above.crackDepthM());
    String more = plain(above.crackedM2() / above.grooveM2());
    CutResult cut = scene.ground();
    return lecture(
        List.of(
            grain(1, above, window, Phase.TOUCHES, layer()),
            grain(2, below, window, Phase.PRESSED, plain(below.loadN()), um(below.depthM())),
            grain(3, above, window, Phase.CRACKED, plain(threshold), load, crack),
            grain(4, above, window, Phase.CHIPPED, more, crack)),
        List.of(),
        layer(),
        plain(threshold),
        Labels.grit(say, scene.grit()),
        plain(scene.bench().loadN()),
        plain(cut.unitLoadN()),
        percent(cut.brittleShare()));
  }

  /** The same grain at the load it has in this layer: a groove, ridges and little that leaves. */
  private Lecture ploughed() {
    GrainMark mark = mark(scene.ground().unitLoadN());
    double window = GrainDrawing.windowUm(mark);
    double threshold = CrackThreshold.loadN(scene.bench().layer().typical());
    return lecture(
        List.of(
            grain(1, mark, window, Phase.TOUCHES, layer()),
            grain(2, mark, window, Phase.PRESSED, plain(mark.loadN()), um(mark.depthM())),
            grain(
                3,
                mark,
                window,
                Phase.DRAGGED,
                percent(mark.chipShare()),
                percent(1 - mark.chipShare()))),
        List.of(),
        layer(),
        plain(mark.loadN()),
        load(threshold),
        times(threshold / mark.loadN()));
  }

  /** A load; beyond a kilonewton the figure says nothing any more. */
  private String load(double newton) {
    return newton >= 1000 ? say.at("drawn.over-kilonewton") : say.at("drawn.newton", plain(newton));
  }

  private String times(double ratio) {
    return ratio >= 10_000 ? say.at("teaching.over-ten-thousand") : plain(ratio);
  }

  private GrainMark mark(double loadN) {
    return GrainMark.of(scene.bench().layer().typical(), loadN);
  }

  /** A step that shows a grain. */
  private Frame grain(int number, GrainMark mark, double windowUm, Phase phase, Object... figures) {
    String id = topic.id() + "-" + number;
    String svg = GrainDrawing.draw(say, id, scene.bench().layer(), mark, windowUm, phase);
    return frame(number, svg, figures);
  }

  /** A blade in and out, against and with rotation. */
  private Lecture chip() {
    List<Frame> frames = new ArrayList<>();
    for (WorkSide side : List.of(WorkSide.LEFT, WorkSide.RIGHT)) {
      ChipDrawing.Cut cut = cut(scene, side);
      for (boolean leaving : new boolean[] {false, true}) {
        int number = frames.size() + 1;
        int at = leaving ? cut.thicknessNm().size() - 1 : 0;
        frames.add(
            frame(
                number,
                ChipDrawing.draw(say, "chip-" + number, scene.bench().layer(), cut, leaving),
                plain(cut.thicknessNm().get(at)),
                plain(Math.abs(cut.alongTravelN()))));
      }
    }
    CutResult result = scene.bench().cut(scene.bur());
    return lecture(
        frames,
        List.of(),
        layer(),
        scene.blades(),
        plain(scene.bench().loadN()),
        nm(result.chipThicknessM()),
        plain(result.tangentialN()));
  }

  /** What a bur does on one side of the travel. */
  static ChipDrawing.Cut cut(Scene scene, WorkSide side) {
    Bench bench = scene.bench();
    Engagement contact = bench.contact();
    CutResult result = bench.cut(scene.bur());
    double depth = contact.depthOfCutM();
    double diameter = contact.diameterM();
    double feed = ChipGeometry.feedPerBladeM(result.chipThicknessM(), depth, diameter);
    double end = ChipGeometry.engagementAngleRad(depth, diameter);
    boolean against = StrokeForces.againstRotation(side);
    List<Double> nm =
        IntStream.range(0, ARC_POINTS)
            .mapToDouble(i -> end * i / (ARC_POINTS - 1))
            // a blade comes from the finished wall against rotation, else from the uncut front
            .map(angle -> against ? angle : end - angle)
            .map(angle -> ChipGeometry.atM(feed, depth, diameter, angle) * 1e9)
            .boxed()
            .toList();
    return new ChipDrawing.Cut(
        scene.blades(),
        bench.diameterMm(),
        depth * 1e3,
        end,
        nm,
        StrokeForces.alongTravelN(side, result.tangentialN(), contact));
  }

  /** Four, eight, twelve, thirty blades on one feed. */
  private Lecture flutes() {
    List<FluteDrawing.Bur> burs = burs(scene);
    Bench bench = scene.bench();
    List<Frame> frames = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>(List.of(heads("blades", "chip")));
    for (FluteDrawing.Bur bur : burs) {
      var part = bench.carbide(bur.blades());
      String rate = plain(bench.rateMm3PerMin(part));
      String ra = plain(bench.raUm(part));
      String chip = nm(bench.cut(part).chipThicknessM());
      frames.add(
          new Frame(
              FluteDrawing.draw(say, "flutes-" + rows.size(), burs, bur.blades()),
              say.at("teaching.flutes-title", bur.blades()),
              say.at("teaching.flutes-says", plain(bur.feedNm()), rate, ra, bur.blades())));
      rows.add(List.of(String.valueOf(bur.blades()), chip, rate, ra));
    }
    return lecture(frames, rows, layer(), plain(bench.loadN()), plain(FEED_M_PER_S * 1e3));
  }

  /** Heads of a table: what is tried, one figure of its own, rate and roughness. */
  private List<String> heads(String tried, String own) {
    return Stream.of(tried, own, "rate", "ra").map(one -> say.at("teaching.col-" + one)).toList();
  }

  /** The feed between two blades, for one travel of the hand. */
  static List<FluteDrawing.Bur> burs(Scene scene) {
    double turn = ChipGeometry.feedPerRevolutionM(FEED_M_PER_S, scene.bench().rpm() / 60);
    return IntStream.of(BLADES)
        .mapToObj(blades -> new FluteDrawing.Bur(blades, turn * 1e9 / blades))
        .toList();
  }

  /** Every grit class to scale. */
  private Lecture grits() {
    List<Frame> frames = new ArrayList<>();
    Bench bench = scene.bench();
    List<List<String>> rows = new ArrayList<>(List.of(heads("grit", "size")));
    for (GritClass grit : GritClass.values()) {
      var part = bench.diamond(grit);
      String rate = plain(bench.rateMm3PerMin(part));
      String ra = plain(bench.raUm(part));
      String size = AbrasiveSurface.size(say, grit);
      String name = Labels.grit(say, grit);
      frames.add(
          new Frame(
              GritDrawing.draw(say, "grits-" + rows.size(), PROTRUSION, grit),
              say.at("teaching.grits-title", name, Labels.ring(say, grit)),
              say.at("teaching.grits-says", size, rate, ra)));
      rows.add(List.of(name, size, rate, ra));
    }
    return lecture(frames, rows, layer(), plain(scene.bench().loadN()));
  }

  /** The load of the hand against the threshold; the load is moved with a slider. */
  private Lecture threshold() {
    CutResult cut = scene.ground();
    double threshold = CrackThreshold.loadN(scene.bench().layer().typical());
    String svg =
        ThresholdDrawing.draw(say, "threshold-1", cut.unitLoadN(), threshold, cut.brittleShare());
    Frame frame =
        new Frame(
            svg,
            say.at("teaching.threshold-1", plain(scene.bench().loadN())),
            say.at(
                "teaching.threshold-1-says",
                plain(cut.unitLoadN()),
                load(threshold),
                percent(cut.brittleShare()),
                plain(cut.removalM3PerS() * 60e9)));
    return lecture(
        List.of(frame), List.of(), layer(), load(threshold), Labels.grit(say, scene.grit()));
  }

  private String percent(double share) {
    return share > 0 && share < 0.005
        ? say.at("drawn.threshold-none")
        : String.valueOf(Math.round(100 * share));
  }
}
