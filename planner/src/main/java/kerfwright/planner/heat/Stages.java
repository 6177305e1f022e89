package kerfwright.planner.heat;

import java.util.List;

/**
 * When each step of a sequence ends, its change of instrument before it included. A draw in which a
 * step takes longer is held against the plan at the same stage of the work, not at the same second.
 */
public final class Stages {
  private final double[] endsS;

  private Stages(double[] endsS) {
    this.endsS = endsS;
  }

  public static Stages of(List<CutHeat> cuts) {
    double[] ends = new double[cuts.size()];
    double sum = 0;
    for (int i = 0; i < ends.length; i++) {
      sum += cuts.get(i).changeS() + cuts.get(i).durationS();
      ends[i] = sum;
    }
    return new Stages(ends);
  }

  /** When all is cut. */
  public double endS() {
    return endsS.length == 0 ? 0 : endsS[endsS.length - 1];
  }

  /**
   * The time at which the other run is at the stage this one is at; after the end both go on alike.
   */
  public double mapS(double timeS, Stages other) {
    double from = 0;
    double otherFrom = 0;
    for (int i = 0; i < endsS.length; i++) {
      if (timeS < endsS[i]) {
        double share = (timeS - from) / (endsS[i] - from);
        return otherFrom + share * (other.endsS[i] - otherFrom);
      }
      from = endsS[i];
      otherFrom = other.endsS[i];
    }
    return otherFrom + timeS - from;
  }
}
