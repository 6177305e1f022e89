package kerfwright.planner.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kerfwright.physics.heat.LayeredColumn;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.operation.Pace;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.quantity.Message;

/**
 * What to do when the pulp wall would pass its limit: the cheapest of less load, lower speed and
 * longer pauses, one at a time, simulated again after each, until it holds or nothing helps.
 */
public final class Remedies {
  private static final int MOST = 40;
  private static final double SOFTER = 0.7;
  private static final double LEAST_LOAD_N = 0.1;
  private static final double LEAST_RPM = 2000;
  private static final double LONGEST_PAUSE_S = 8;
  private static final double EVERY_S = 0.5;

  private final PulpWall wall;
  private final HeatInputs inputs;
  private final CandidateSearch search;
  private final LayeredColumn column = LayeredColumn.lumping();
  private final List<Message> taken = new ArrayList<>();

  /** Remedies for a case. */
  public Remedies(PulpWall wall, HeatInputs inputs, CandidateSearch search) {
    this.wall = wall;
    this.inputs = inputs;
    this.search = search;
  }

  /** Applies remedies until the column's peak is below the target or nothing helps any more. */
  public List<TimedCut> apply(List<TimedCut> planned, double targetK) {
    List<TimedCut> sequence = new ArrayList<>(planned);
    double peak = peakK(sequence);
    for (int i = 0; i < MOST && peak >= targetK; i++) {
      Optional<Trial> best = bestTrial(sequence, peak);
      if (best.isEmpty()) {
        break;
      }
      sequence.set(best.get().index(), best.get().cut());
      peak = best.get().peakK();
      if (!taken.contains(best.get().said())) {
        taken.add(best.get().said());
      }
    }
    return sequence;
  }

  /** What was done, in the order it was done. */
  public List<Message> taken() {
    return List.copyOf(taken);
  }

  private record Trial(int index, TimedCut cut, double peakK, double extraS, Message said) {
    double price(double before) {
      return Math.max(0.1, extraS) / (before - peakK);
    }
  }

  private Optional<Trial> bestTrial(List<TimedCut> sequence, double peak) {
    Trial best = null;
    for (int i = 0; i < sequence.size(); i++) {
      for (Change change : changes(sequence.get(i))) {
        List<TimedCut> trial = new ArrayList<>(sequence);
        trial.set(i, change.cut());
        double reached = peakK(trial);
        if (reached < peak - 0.01) {
          double extra = change.cut().heatS() - sequence.get(i).heatS();
          Trial found =
              new Trial(
                  i,
                  change.cut(),
                  reached,
                  extra,
                  Message.of("finding.remedy", i + 1, change.said()));
          if (best == null || found.price(peak) < best.price(peak)) {
            best = found;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private record Change(TimedCut cut, Message said) {}

  private List<Change> changes(TimedCut old) {
    List<Change> changes = new ArrayList<>();
    Candidate c = old.candidate();
    Pace pace = old.pace();
    if (pace.pauseS() < LONGEST_PAUSE_S) {
      double longer = Math.min(LONGEST_PAUSE_S, Math.max(1, pace.pauseS() * 2));
      changes.add(
          new Change(
              new TimedCut(c, new Pace(pace.cutS(), longer)), Message.of("finding.remedy-pauses")));
    }
    if (c.loadN() * SOFTER >= LEAST_LOAD_N) {
      Candidate lighter = search.again(c, c.setRpm(), c.loadN() * SOFTER);
      if (lighter != null) {
        changes.add(new Change(new TimedCut(lighter, pace), Message.of("finding.remedy-load")));
      }
    }
    if (c.setRpm() * SOFTER >= LEAST_RPM
        && c.purpose() != Purpose.POLISH
        && !CandidateSearch.oneSpeed(c)) {
      Candidate slower = search.again(c, c.setRpm() * SOFTER, c.loadN());
      if (slower != null) {
        changes.add(new Change(new TimedCut(slower, pace), Message.of("finding.remedy-speed")));
      }
    }
    return changes;
  }

  /** The peak by the quick column. */
  public double peakK(List<TimedCut> sequence) {
    return wall.quick(column, SequenceHeat.cuts(sequence), inputs, EVERY_S).peakK();
  }

  /** The peak with the water usually asked for, to say whether more of it would help. */
  public double peakWithWaterK(List<TimedCut> sequence, double flowMlPerMin) {
    return new PulpWall(wall.layers(), wall.areaMm2(), flowMlPerMin)
        .quick(column, SequenceHeat.cuts(sequence), inputs, EVERY_S)
        .peakK();
  }
}
