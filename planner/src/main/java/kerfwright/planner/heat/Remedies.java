package kerfwright.planner.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kerfwright.physics.heat.column.LayeredColumn;
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

  /** The first of the cheapest, whatever the order in which they are simulated. */
  private Optional<Trial> bestTrial(List<TimedCut> sequence, double peak) {
    return IntStream.range(0, sequence.size())
        .parallel()
        .mapToObj(i -> trials(sequence, i))
        .flatMap(List::stream)
        .filter(trial -> trial.peakK() < peak - 0.01)
        .reduce((best, next) -> next.price(peak) < best.price(peak) ? next : best);
  }

  private List<Trial> trials(List<TimedCut> sequence, int index) {
    LayeredColumn own = LayeredColumn.lumping();
    List<Trial> trials = new ArrayList<>();
    for (Change change : changes(sequence.get(index))) {
      List<TimedCut> changed = new ArrayList<>(sequence);
      changed.set(index, change.cut());
      trials.add(
          new Trial(
              index,
              change.cut(),
              peakK(own, changed),
              change.cut().heatS() - sequence.get(index).heatS(),
              Message.of("finding.remedy", index + 1, change.said())));
    }
    return trials;
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
    return peakK(column, sequence);
  }

  private double peakK(LayeredColumn by, List<TimedCut> sequence) {
    return wall.quick(by, SequenceHeat.cuts(sequence), inputs, EVERY_S).peakK();
  }

  /** The peak with the water usually asked for, to say whether more of it would help. */
  public double peakWithWaterK(List<TimedCut> sequence, double flowMlPerMin) {
    return new PulpWall(wall.layers(), wall.areaMm2(), flowMlPerMin)
        .quick(column, SequenceHeat.cuts(sequence), inputs, EVERY_S)
        .peakK();
  }
}
