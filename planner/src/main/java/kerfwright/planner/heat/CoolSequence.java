package kerfwright.planner.heat;

import java.util.List;
import java.util.function.Consumer;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.sequence.TimedCut;

/**
 * A sequence made cool enough, if it can be, and its simulated heat. The quick column guides the
 * search for remedies; the axisymmetric result decides.
 *
 * @param sequence the sequence after remedies
 * @param shown the axisymmetric simulation of it
 */
public record CoolSequence(List<TimedCut> sequence, WallHistory shown) {
  private static final int ROUNDS = 6;
  private static final int POINTS = 120;
  private static final double LEAST_INTERVAL_S = 0.25;

  public CoolSequence {
    sequence = List.copyOf(sequence);
  }

  /**
   * Simulates a sequence and, where the pulp is protected, applies remedies until it holds.
   *
   * @param quick true where the column decides too
   * @param likely told each sequence the column takes to hold, before it is simulated
   */
  public static CoolSequence of(
      PulpWall wall,
      Remedies remedies,
      List<TimedCut> planned,
      boolean protectsPulp,
      boolean quick,
      Consumer<List<TimedCut>> likely) {
    List<TimedCut> sequence = planned;
    if (!protectsPulp || remedies.peakK(sequence) < WallHistory.LIMIT_K) {
      likely.accept(sequence);
    }
    WallHistory shown = simulate(wall, sequence, quick);
    double target = WallHistory.LIMIT_K;
    for (int i = 0; protectsPulp && i < ROUNDS && shown.peakK() >= WallHistory.LIMIT_K; i++) {
      double column = remedies.peakK(sequence);
      target = Math.min(0.9 * target, 0.95 * column * WallHistory.LIMIT_K / shown.peakK());
      List<TimedCut> cooler = remedies.apply(sequence, target);
      if (cooler.equals(sequence)) {
        break;
      }
      sequence = cooler;
      likely.accept(sequence);
      shown = simulate(wall, sequence, quick);
    }
    return new CoolSequence(sequence, shown);
  }

  private static WallHistory simulate(PulpWall wall, List<TimedCut> sequence, boolean quick) {
    double every = Math.max(LEAST_INTERVAL_S, lastsS(sequence) / POINTS);
    if (quick) {
      return wall.quick(
          new LayeredColumn(), SequenceHeat.cuts(sequence), HeatInputs.TYPICAL, every);
    }
    return wall.shown(SequenceHeat.cuts(sequence), HeatInputs.TYPICAL, every);
  }

  /** How long a sequence is followed, changes and the time after it included. */
  public static double lastsS(List<TimedCut> sequence) {
    return Stages.of(SequenceHeat.cuts(sequence)).endS() + PulpWall.AFTER_S;
  }
}
