package kerfwright.planner.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import kerfwright.catalogue.evidence.Family;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.material.Substance;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.PartCut;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.heat.Stages;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.sequence.Change;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;
import org.jspecify.annotations.Nullable;

/** Runs a chosen sequence again and again over everything uncertain. */
public final class Sampler {
  private static final int CURVE_POINTS = 120;

  /** In a draw where the tool hardly bites the hand gives up after an hour. */
  private static final double GIVEN_UP_S = 3600;

  private final CutCase cutCase;
  private final List<TimedCut> sequence;
  private final int samples;
  private final double[][][] steps;
  private final double[] total;
  private final double[] cutting;
  private final double[] peak;
  private final double[] above;
  private final double[] dose;
  private final double[] dentine;
  private final double[][] lowest;
  private final double[][] highest;
  private final double curveEveryS;
  private final String face;
  private final boolean judged;
  private final Stages planned;
  private final OwnPace pace;
  private @Nullable Parts parts;

  private static final int FIGURES = 11;

  /** Place of the time of a step among its figures. */
  private static final int TIME = 8;

  private static final int CUTTING = 10;
  private static final int A_PART = 8;

  /** Prepares the samples of a sequence whose simulation lasts a given time. */
  public Sampler(
      CutCase cutCase, List<TimedCut> sequence, int samples, double lastsS, OwnPace pace) {
    this.cutCase = cutCase;
    this.pace = pace;
    this.sequence = List.copyOf(sequence);
    this.samples = samples;
    steps = new double[sequence.size()][FIGURES][samples];
    total = new double[samples];
    cutting = new double[samples];
    peak = new double[samples];
    above = new double[samples];
    dose = new double[samples];
    dentine = new double[samples];
    lowest = new double[CURVE_POINTS][samples];
    highest = new double[CURVE_POINTS][samples];
    curveEveryS = Math.max(0.25, lastsS / CURVE_POINTS);
    face = SequenceHeat.hottestFace(sequence);
    judged = cutCase.pulp().protectsPulp() && SequenceHeat.atThePulp(sequence);
    planned = Stages.of(SequenceHeat.cuts(sequence));
  }

  /** Draws all samples with a seed; strokes that repeat are lumped. */
  public SampledPlan run(long seed) {
    begin(seed, LayeredColumn::lumping);
    return result();
  }

  /** The same by columns of another kind. */
  public SampledPlan run(long seed, Supplier<LayeredColumn> columns) {
    begin(seed, columns);
    return result();
  }

  /**
   * Begins on the other cores while the caller does something else. What a sample draws depends on
   * its number alone, so that the result is the same on any machine.
   */
  public void begin(long seed) {
    begin(seed, LayeredColumn::lumping);
  }

  private void begin(long seed, Supplier<LayeredColumn> columns) {
    parts =
        Parts.begin(
            (samples + A_PART - 1) / A_PART,
            () -> {
              LayeredColumn column = columns.get();
              return part -> {
                for (int s = part * A_PART; s < Math.min(samples, (part + 1) * A_PART); s++) {
                  sample(s, new Draw(seed, s), column);
                }
              };
            });
  }

  /** Whether these are samples of a sequence. */
  public boolean isOf(List<TimedCut> other) {
    return sequence.equals(other);
  }

  /** Nobody wants the result any more. */
  public void leave() {
    Objects.requireNonNull(parts).leave();
  }

  /** The result, when all samples are drawn. */
  public SampledPlan result() {
    Objects.requireNonNull(parts).finish();
    List<StepSpread> spreads = new ArrayList<>();
    for (double[][] figures : steps) {
      spreads.add(spread(figures));
    }
    double[] times = new double[CURVE_POINTS];
    double[] low = new double[CURVE_POINTS];
    double[] high = new double[CURVE_POINTS];
    for (int i = 0; i < CURVE_POINTS; i++) {
      Arrays.sort(lowest[i]);
      Arrays.sort(highest[i]);
      times[i] = (i + 1) * curveEveryS;
      low[i] = Percentiles.at(lowest[i], 0.05);
      high[i] = Percentiles.at(highest[i], 0.95);
    }
    return new SampledPlan(
        spreads,
        Percentiles.of(total),
        Percentiles.of(cutting),
        Percentiles.of(peak),
        Percentiles.of(above),
        Percentiles.of(dose),
        Percentiles.of(dentine),
        times,
        low,
        high);
  }

  private static StepSpread spread(double[][] f) {
    Estimate[] e = new Estimate[FIGURES];
    for (int i = 0; i < FIGURES; i++) {
      e[i] = Percentiles.of(f[i]);
    }
    return new StepSpread(e[0], e[1], e[2], e[3], e[4], e[5], e[6], e[7], e[8], e[9], e[10]);
  }

  private void sample(int s, Draw draw, LayeredColumn column) {
    DrawnLayers depths = new DrawnLayers(cutCase, sequence, draw);
    List<CutHeat> heat = new ArrayList<>();
    double time = 0;
    TimedCut before = null;
    for (int i = 0; i < sequence.size(); i++) {
      TimedCut cut = sequence.get(i);
      double change = before == null ? 0 : Change.seconds(before.candidate(), cut.candidate());
      CutHeat done = step(s, i, cut, draw, depths, change);
      heat.add(done);
      time += change + steps[i][TIME][s];
      cutting[s] += steps[i][CUTTING][s];
      before = cut;
    }
    total[s] = time;
    dentine[s] = depths.dentineLeftMm(sequence);
    if (!judged) {
      return;
    }
    PulpWall wall =
        new PulpWall(
            depths.heatLayers(draw),
            cutCase.outline().areaM2() * 1e6,
            cutCase.coolant().millilitresPerMinute());
    HeatInputs inputs = draw.heatInputs();
    Family family =
        cutCase.coolant().millilitresPerMinute() > 0 ? Family.WET_HEAT : Family.DRY_HEAT;
    WallHistory history =
        OffHistory.of(wall.quick(column, heat, inputs, curveEveryS), draw.off(family, "pulp wall"));
    peak[s] = history.peakK();
    above[s] = history.secondsAboveLimit();
    dose[s] = history.cem43Min();
    Stages stages = Stages.of(heat);
    double from = 0;
    for (int i = 0; i < CURVE_POINTS; i++) {
      double to = planned.mapS((i + 1) * curveEveryS, stages);
      lowest[i][s] = history.lowestK(from, to);
      highest[i][s] = history.highestK(from, to);
      from = to;
    }
  }

  /** What a rate lies off the models: as in any practice, or as far as this one's cuts tell. */
  private double rateOff(Candidate c, Draw draw) {
    String material = c.material().id();
    Family family = Against.rate(c.instrument().part());
    return pace.known(material, c.instrument().properties().kind())
        .map(own -> own.sd() * draw.normal("own " + family.id()))
        .orElseGet(() -> draw.off(family, material + " " + c.id()));
  }

  private CutHeat step(
      int s, int i, TimedCut timed, Draw draw, DrawnLayers depths, double changeS) {
    Candidate c = timed.candidate();
    Instrument instrument = c.instrument();
    Substance work = draw.substance(c.material());
    double load = c.loadN() * draw.loadFactor;
    double ratio = instrument.part().forceRatio(work, c.contact(), load);
    double diameter = instrument.properties().headDiameter().metres();
    double rpm =
        c.handpiece()
            .drive()
            .speedUnder(new Torque(ratio * load * diameter / 2), RotationalSpeed.ofRpm(c.setRpm()))
            .rpm();
    // A heavy hand can stall a weak drive in a draw; it then creeps at a tenth of the planned
    // speed.
    rpm = rpm > 0 ? rpm : 0.1 * c.underLoadRpm();
    double rim = Math.PI * c.contact().diameterM() * rpm / 60;
    OperatingPoint point =
        new OperatingPoint(
            load,
            rim,
            cutCase.coolant().millilitresPerMinute(),
            instrument.part().sharpness(),
            timed.pace().cutS());
    CutResult cut = instrument.part().cut(work, c.contact(), point);
    double factor = StrictMath.exp(rateOff(c, draw));
    double from = depths.sampledM(c.work().fromM());
    double to = depths.sampledM(c.work().toM());
    double sharpS = 0;
    double usualLives = 0;
    double volume = 0;
    for (PartCut part : c.parts()) {
      Substance of = draw.substance(part.material());
      double m3 = part.volumeM3() * depths.stretched(part.layer());
      CutResult in = part == c.parts().get(0) ? cut : instrument.part().cut(of, c.contact(), point);
      sharpS += m3 / Math.max(1e-15, in.removalM3PerS() * factor);
      usualLives += m3 * instrument.part().livesPerM3(of, rim);
      volume += m3;
    }
    double lives = c.ownWear() * usualLives;
    double cutting = c.ownPace() * usualS(c, sharpS, lives);
    boolean here = SequenceHeat.face(c).equals(face);
    // heat is never simulated over less than the literature's time
    double literature = usualS(c, sharpS, usualLives);
    double[] values = {
      rpm,
      rim,
      load,
      from * 1e3,
      to * 1e3,
      volume / Math.max(1e-9, cutting) * 6e10,
      cut.powerW(),
      (instrument.part().raM(work, cut)
              + c.raM()
              - instrument.part().raM(c.material().typical(), c.cut()))
          * 1e6,
      cutting + timed.pace().pausesS(cutting),
      lives,
      cutting
    };
    for (int f = 0; f < FIGURES; f++) {
      steps[i][f][s] = values[f];
    }
    return new CutHeat(
        Math.max(cutting, literature),
        timed.pace().cutS(),
        timed.pace().pauseS(),
        here ? cut.powerW() : 0,
        here ? depths.deepensMm(to) : 0,
        changeS,
        c.contact().areaM2() * 1e6);
  }

  /** Cutting time by the literature while lives are used. */
  private static double usualS(Candidate c, double sharpS, double lives) {
    double blunting =
        c.instrument().part().meanOver(Math.min(lives, Sharpness.LIFE_END), c.steadyShare());
    return Math.min(GIVEN_UP_S, Math.max(c.leastS(), c.overlap() * sharpS / blunting));
  }
}
