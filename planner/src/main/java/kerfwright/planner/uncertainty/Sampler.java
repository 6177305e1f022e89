package kerfwright.planner.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.LayeredColumn;
import kerfwright.physics.material.Substance;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.heat.Stages;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.sequence.Change;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

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
  private final double[] peak;
  private final double[] above;
  private final double[] dose;
  private final double[] dentine;
  private final double[][] lowest;
  private final double[][] highest;
  private final double curveEveryS;
  private final Stages planned;

  private static final int FIGURES = 10;

  /** Place of the time of a step among its figures. */
  private static final int TIME = 8;

  /** Prepares the samples of a sequence whose simulation lasts a given time. */
  public Sampler(CutCase cutCase, List<TimedCut> sequence, int samples, double lastsS) {
    this.cutCase = cutCase;
    this.sequence = List.copyOf(sequence);
    this.samples = samples;
    steps = new double[sequence.size()][FIGURES][samples];
    total = new double[samples];
    peak = new double[samples];
    above = new double[samples];
    dose = new double[samples];
    dentine = new double[samples];
    lowest = new double[CURVE_POINTS][samples];
    highest = new double[CURVE_POINTS][samples];
    curveEveryS = Math.max(0.25, lastsS / CURVE_POINTS);
    planned = Stages.of(SequenceHeat.cuts(sequence));
  }

  /** Draws all samples with a seed. */
  public SampledPlan run(long seed) {
    Random random = new Random(seed);
    LayeredColumn column = new LayeredColumn();
    for (int s = 0; s < samples; s++) {
      sample(s, new Draw(random), column);
    }
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
    return new StepSpread(e[0], e[1], e[2], e[3], e[4], e[5], e[6], e[7], e[8], e[9]);
  }

  private void sample(int s, Draw draw, LayeredColumn column) {
    Depths depths = new Depths(cutCase, sequence, draw);
    List<CutHeat> heat = new ArrayList<>();
    double time = 0;
    TimedCut before = null;
    for (int i = 0; i < sequence.size(); i++) {
      TimedCut cut = sequence.get(i);
      double change = before == null ? 0 : Change.seconds(before.candidate(), cut.candidate());
      CutHeat done = step(s, i, cut, draw, depths, change);
      heat.add(done);
      time += change + steps[i][TIME][s];
      before = cut;
    }
    total[s] = time;
    dentine[s] = depths.dentineLeftMm(sequence);
    PulpWall wall =
        new PulpWall(
            depths.heatLayers(draw),
            cutCase.outline().areaM2() * 1e6,
            cutCase.coolant().millilitresPerMinute());
    HeatInputs inputs = draw.heatInputs();
    WallHistory history = wall.quick(column, heat, inputs, curveEveryS);
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

  /** Removal rate on average while lives are used. */
  private static double rate(Instrument instrument, double fresh, double lives) {
    double mean = instrument.part().meanOver(Math.min(lives, Sharpness.LIFE_END));
    return Math.max(1e-15, fresh * mean);
  }

  private CutHeat step(int s, int i, TimedCut timed, Draw draw, Depths depths, double changeS) {
    Candidate c = timed.candidate();
    Segment segment = c.segment();
    Instrument instrument = c.instrument();
    Substance work = draw.substance(segment.material());
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
    CutResult cut =
        instrument
            .part()
            .cut(
                work,
                c.contact(),
                new OperatingPoint(
                    load,
                    rim,
                    cutCase.coolant().millilitresPerMinute(),
                    instrument.part().sharpness()));
    boolean abrasive = instrument.part() instanceof AbrasivePart;
    double factor = abrasive ? draw.abrasiveFactor : draw.bladedFactor;
    double from = depths.sampledM(segment.layer(), segment.fromM());
    double to = depths.sampledM(segment.layer(), segment.toM());
    double volume = Math.max(1e-13, segment.areaM2() * (to - from));
    double usualLives = volume * instrument.part().livesPerM3(work, rim);
    double lives = c.ownWear() * usualLives;
    double fresh = cut.removalM3PerS() * factor;
    double rate = rate(instrument, fresh, lives);
    double overlap = c.cutS() * c.meanRemovalM3PerS() / c.segment().volumeM3();
    double cutting = Math.min(GIVEN_UP_S, volume / rate * overlap);
    // heat is never simulated over less than the literature's time
    double literature =
        Math.min(
            GIVEN_UP_S, volume / rate(instrument, fresh, usualLives) * (overlap / c.ownPace()));
    double[] values = {
      rpm,
      rim,
      load,
      from * 1e3,
      to * 1e3,
      rate / c.ownPace() * 6e10,
      cut.powerW(),
      (instrument.part().raM(work, cut)
              + c.raM()
              - instrument.part().raM(segment.material().typical(), c.cut()))
          * 1e6,
      cutting + timed.pace().pausesS(cutting),
      lives
    };
    for (int f = 0; f < FIGURES; f++) {
      steps[i][f][s] = values[f];
    }
    return new CutHeat(
        Math.max(cutting, literature),
        timed.pace().cutS(),
        timed.pace().pauseS(),
        cut.powerW(),
        segment.punch() ? 0 : (to - from) * 1e3,
        changeS,
        c.contact().areaM2() * 1e6);
  }

  /** Where layers lie in a draw. Depth is read by eye and feel: a layer is cut through as it is. */
  private static final class Depths {
    private final List<Layer> layers;
    private final double[] typicalM;
    private final double[] drawnM;
    private final boolean[] through;

    Depths(CutCase c, List<TimedCut> sequence, Draw draw) {
      layers = c.layers();
      through = new boolean[layers.size()];
      typicalM = new double[layers.size()];
      drawnM = new double[layers.size()];
      for (int i = 0; i < layers.size(); i++) {
        typicalM[i] = layers.get(i).thickness().typical().metres();
        drawnM[i] = draw.thicknessM(layers.get(i).thickness());
      }
      double top = 0;
      for (int i = 0; i < layers.size(); i++) {
        double bottom = top + typicalM[i] - 1e-9;
        int layer = i;
        through[i] =
            sequence.stream()
                .map(t -> t.candidate().segment())
                .anyMatch(g -> g.layer() == layer && g.toM() >= bottom);
        top += typicalM[i];
      }
    }

    /** A planned depth in a layer: measured from its top, and stretched where it is cut through. */
    double sampledM(int layer, double plannedM) {
      double top = 0;
      double drawnTop = 0;
      for (int i = 0; i < layer; i++) {
        top += typicalM[i];
        drawnTop += drawnM[i];
      }
      double into = plannedM - top;
      return drawnTop
          + (through[layer]
              ? into * drawnM[layer] / typicalM[layer]
              : Math.min(into, drawnM[layer]));
    }

    double dentineLeftMm(List<TimedCut> sequence) {
      double left = 0;
      double deepest = 0;
      for (TimedCut cut : sequence) {
        Segment s = cut.candidate().segment();
        deepest = Math.max(deepest, sampledM(s.layer(), s.toM()));
      }
      double top = 0;
      for (int i = 0; i < layers.size(); i++) {
        if (layers.get(i).material().id().equals("dentine")) {
          left += Math.max(0, top + drawnM[i] - Math.max(top, deepest));
        }
        top += drawnM[i];
      }
      return left * 1e3;
    }

    List<HeatLayer> heatLayers(Draw draw) {
      List<HeatLayer> result = new ArrayList<>();
      for (int i = 0; i < layers.size(); i++) {
        result.add(HeatLayer.of(drawnM[i] * 1e3, draw.substance(layers.get(i).material())));
      }
      return result;
    }
  }
}
