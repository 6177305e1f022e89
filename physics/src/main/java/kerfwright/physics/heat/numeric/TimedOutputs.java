package kerfwright.physics.heat.numeric;

/** Keeps what falls due at the output times, along straight lines between time steps. */
public final class TimedOutputs {
  private static final int MOST = 5_000_000;

  /** Output times, the first one interval after the start. */
  public final double[] timesS;

  /** Every quantity at every output time. */
  public final double[][] values;

  private final double everyS;
  private final CycleWave wave;
  private final double[] last;
  private double lastS;
  private int written;

  public TimedOutputs(int quantities, double everyS, double durationS) {
    this(quantities, everyS, durationS, new CycleWave(0));
  }

  public TimedOutputs(int quantities, double everyS, double durationS, CycleWave wave) {
    this.everyS = everyS;
    this.wave = wave;
    double wanted = Math.floor(durationS / everyS + 1e-6);
    if (wanted > MOST) {
      throw new IllegalArgumentException(
          "At most " + MOST + " outputs are kept, got " + wanted + "; take a longer interval");
    }
    timesS = new double[(int) wanted];
    values = new double[quantities][timesS.length];
    last = new double[quantities];
  }

  /** What the quantities are at the start. */
  public void start(double[] now) {
    System.arraycopy(now, 0, last, 0, last.length);
  }

  /** What they are at the end of a time step. */
  public void step(double[] now, double atS) {
    while (written < timesS.length) {
      double due = (written + 1) * everyS;
      if (due > atS + 1e-7 * everyS) {
        break;
      }
      double share = atS > lastS ? Math.min(1, (due - lastS) / (atS - lastS)) : 1;
      timesS[written] = due;
      for (int q = 0; q < last.length; q++) {
        values[q][written] = last[q] + share * (now[q] - last[q]) + wave.at(q, due);
      }
      written++;
    }
    start(now);
    lastS = atS;
  }

  /** The first quantities, one row each. */
  public double[][] first(int count) {
    return java.util.Arrays.copyOf(values, count);
  }
}
