package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.physics.material.Substance;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.sequence.Trials.Trial;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import org.jspecify.annotations.Nullable;

/**
 * Every instrument in every handpiece that survives the hard limits, each at its cheapest operating
 * point.
 *
 * <p>Loads up to 1 N, what most dentists use (Siegel SC, von Fraunhofer JA, DC057), 0.5 N where it
 * is delicate; a stroke with rotation only as hard as a pull of 0.25 N allows (project setting).
 */
public final class CandidateSearch {
  private static final double[] SPEED_SHARES = {1, 0.75, 0.5, 0.25};
  private static final double[] BULK_LOADS_N = {0.3, 0.5, 0.75, 1.0};
  private static final double[] OPEN_LOADS_N = {0.3, 0.5, 0.75, 1.0, 1.5};
  private static final double[] LIGHT_LOADS_N = {0.2, 0.3, 0.4, 0.5};

  private final CutCase cutCase;
  private final List<Instrument> instruments;
  private final Trials trials;
  private final Map<String, Exclusion> excludedAlways = new TreeMap<>();

  /** Prepares a search over the drawer for a case. */
  public CandidateSearch(
      CutCase cutCase, List<DrawerInstrument> drawer, double depthM, List<Veto> vetoes) {
    this(cutCase, drawer, depthM, vetoes, OwnPace.NONE);
  }

  /** The same with a practice's own pace. */
  public CandidateSearch(
      CutCase cutCase,
      List<DrawerInstrument> drawer,
      double depthM,
      List<Veto> vetoes,
      OwnPace pace) {
    this.cutCase = cutCase;
    this.trials = new Trials(cutCase, vetoes, pace);
    List<Instrument> allowed = new ArrayList<>();
    for (DrawerInstrument d : drawer) {
      Instrument instrument = Instrument.of(d);
      if (instrument == null) {
        excludedAlways.put(d.id(), Exclusion.of("working-part-unknown"));
        continue;
      }
      Optional<Exclusion> no = HardLimits.ofInstrument(instrument, cutCase.outline(), depthM);
      if (no.isPresent()) {
        excludedAlways.put(d.id(), no.get());
      } else {
        allowed.add(instrument);
      }
    }
    this.instruments = List.copyOf(allowed);
  }

  /** Instruments left out for the whole case, with the reason, by id. */
  public Map<String, Exclusion> excludedAlways() {
    return excludedAlways;
  }

  /** Candidates for a stretch, with why the others are out. */
  public Found on(Segment segment) {
    List<Candidate> found = new ArrayList<>();
    Map<String, Exclusion> out = new TreeMap<>();
    for (Instrument instrument : instruments) {
      boolean anyHandpiece = false;
      Exclusion last = null;
      for (Handpiece handpiece : cutCase.handpieces()) {
        if (!HardLimits.fits(instrument, handpiece)) {
          continue;
        }
        anyHandpiece = true;
        Trial trial = best(instrument, handpiece, segment);
        if (trial.candidate() != null) {
          found.add(trial.candidate());
        } else {
          last = trial.exclusion();
        }
      }
      if (!anyHandpiece) {
        last = Exclusion.of("no-handpiece", instrument.properties().shank().name());
      }
      if (last != null) {
        out.put(instrument.drawer().id(), last);
      }
    }
    return new Found(segment, found, out);
  }

  private Trial best(Instrument instrument, Handpiece handpiece, Segment segment) {
    Substance work = segment.material().typical();
    Exclusion wrong = wrongFor(instrument, segment, work);
    if (wrong != null) {
      return new Trial(null, wrong);
    }
    Candidate best = null;
    Exclusion why = null;
    double highest = HardLimits.highestRpm(instrument, handpiece);
    for (double share : SPEED_SHARES) {
      for (double load : loads(segment)) {
        for (Stroke stroke : strokes(instrument, segment)) {
          Trial trial = trials.at(instrument, handpiece, segment, share * highest, load, stroke);
          if (trial.candidate() == null) {
            why = trial.exclusion();
          } else if (best == null || trial.candidate().literatureCostS() < best.literatureCostS()) {
            best = trial.candidate();
          }
        }
      }
    }
    return new Trial(best, best == null ? why : null);
  }

  private static @Nullable Exclusion wrongFor(
      Instrument instrument, Segment segment, Substance work) {
    if (!HardnessRatio.canCut(instrument.part().hardnessPa(), work.hardnessPa())) {
      return Exclusion.of(
          "softer-than-the-work", Message.of("label.material-" + segment.material().id()));
    }
    boolean polishes = instrument.part() instanceof AbrasivePart a && a.polishes();
    if (polishes != (segment.purpose() == Purpose.POLISH)) {
      return new Exclusion(
          "not-for-this-step",
          Message.of(polishes ? "exclusion.polishes-only" : "exclusion.cuts-only"));
    }
    ShapeFamily shape = instrument.properties().shape();
    if (segment.punch() && !shape.cutsAtTip()) {
      return Exclusion.of("no-tip");
    }
    return null;
  }

  private double[] loads(Segment segment) {
    if (segment.purpose() != Purpose.BULK || segment.wholeBelow()) {
      return LIGHT_LOADS_N;
    }
    return cutCase.outline().shape().walled() ? BULK_LOADS_N : OPEN_LOADS_N;
  }

  private static List<Stroke> strokes(Instrument instrument, Segment segment) {
    if (segment.punch()) {
      return List.of(Stroke.AXIAL);
    }
    return switch (segment.purpose()) {
      case BULK, APPROACH -> List.of(Stroke.AGAINST_ROTATION, Stroke.WITH_ROTATION);
      case FINISH -> List.of(Stroke.WITH_ROTATION);
      case POLISH -> List.of(Stroke.BRUSHING);
    };
  }

  /** One instrument at one operating point, with every limit and veto looked at again. */
  public Tried tried(
      DrawerInstrument drawer,
      Handpiece handpiece,
      Segment segment,
      double setRpm,
      double loadN,
      Stroke stroke) {
    Exclusion always = excludedAlways.get(drawer.id());
    if (always != null) {
      return Tried.not(always);
    }
    Instrument instrument =
        instruments.stream().filter(i -> i.drawer().equals(drawer)).findFirst().orElse(null);
    if (instrument == null || !HardLimits.fits(instrument, handpiece)) {
      return Tried.not(new Exclusion("no-handpiece", Message.of("exclusion.no-handpiece-here")));
    }
    double highest = HardLimits.highestRpm(instrument, handpiece);
    if (setRpm > highest * (1 + 1e-9)) {
      return Tried.not(Exclusion.of("too-fast", Rounded.places(highest, 0)));
    }
    Exclusion wrong = wrongFor(instrument, segment, segment.material().typical());
    if (wrong != null) {
      return Tried.not(wrong);
    }
    Trial trial = trials.at(instrument, handpiece, segment, setRpm, loadN, stroke);
    return new Tried(trial.candidate(), trial.exclusion());
  }

  /** The highest speed one of the candidates may be set to. */
  public static double highestRpm(Candidate c) {
    return HardLimits.highestRpm(c.instrument(), c.handpiece());
  }

  /** A candidate at another speed or load, or null where a limit forbids it. */
  public @Nullable Candidate again(Candidate old, double setRpm, double loadN) {
    return trials
        .at(old.instrument(), old.handpiece(), old.segment(), setRpm, loadN, old.stroke())
        .candidate();
  }
}
