package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.catalogue.operation.Operating;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.physics.cutting.TurbineDrive;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.LastResort;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.rule.Windows;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import org.jspecify.annotations.Nullable;

/**
 * Every instrument in every handpiece that survives the hard limits and the operation's window,
 * each at its cheapest operating points.
 *
 * <p>Where an operation tells no load: up to 1 N, what most dentists use (Siegel SC, von Fraunhofer
 * JA, DC057), 0.5 N where it is delicate.
 */
public final class CandidateSearch {
  private static final int LEVELS = 4;
  private static final double SLOWEST_SHARE = 0.25;
  private static final double[] BULK_N = {0.3, 1.0};
  private static final double[] LIGHT_N = {0.2, 0.5};

  private final CutCase cutCase;
  private final List<Instrument> instruments;
  private final OperatingPoints points;
  private final boolean open;
  private final Map<String, Exclusion> excludedAlways = new TreeMap<>();

  /** A search within the operations' windows. */
  public CandidateSearch(
      CutCase cutCase, List<DrawerInstrument> drawer, List<Veto> vetoes, OwnPace pace) {
    this(cutCase, drawer, vetoes, pace, false);
  }

  /** The same; with open windows kind, grit, blades and speed are left to the models. */
  public CandidateSearch(
      CutCase cutCase,
      List<DrawerInstrument> drawer,
      List<Veto> vetoes,
      OwnPace pace,
      boolean open) {
    this.cutCase = cutCase;
    this.open = open;
    this.points = new OperatingPoints(cutCase, vetoes, pace, open);
    List<Instrument> allowed = new ArrayList<>();
    for (DrawerInstrument d : drawer) {
      Instrument instrument = Instrument.of(d);
      if (instrument == null) {
        excludedAlways.put(d.id(), Exclusion.of("working-part-unknown"));
        continue;
      }
      Optional<Exclusion> no = HardLimits.ofInstrument(instrument);
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

  /**
   * Candidates for an operation, with why the others are out. Last resorts only where nothing
   * fitting is left.
   */
  public Found on(Work work) {
    List<Candidate> fitting = new ArrayList<>();
    List<Candidate> lastResorts = new ArrayList<>();
    Map<String, Exclusion> out = new TreeMap<>();
    for (Instrument instrument : instruments) {
      List<Candidate> found = new ArrayList<>();
      Exclusion why = add(instrument, work, found);
      if (why != null) {
        out.put(instrument.drawer().id(), why);
      }
      boolean last = Windows.resort(instrument.properties(), work) != LastResort.NONE;
      (last ? lastResorts : fitting).addAll(found);
    }
    return new Found(work, fitting.isEmpty() ? lastResorts : fitting, out);
  }

  /** Adds what an instrument may do; tells the last reason where a handpiece allows nothing. */
  private @Nullable Exclusion add(Instrument instrument, Work work, List<Candidate> found) {
    Exclusion wrong = against(instrument, work);
    if (wrong != null) {
      return wrong;
    }
    Exclusion why = Exclusion.of("no-handpiece", instrument.properties().shank().name());
    for (Handpiece handpiece : cutCase.handpieces()) {
      if (!HardLimits.fits(instrument, handpiece)) {
        continue;
      }
      Exclusion no = against(instrument, handpiece, work);
      why = no == null ? best(instrument, handpiece, work, found) : no;
    }
    return found.isEmpty() ? why : null;
  }

  private @Nullable Exclusion against(Instrument instrument, Work work) {
    double head = instrument.properties().headDiameter().metres();
    double hardness = work.material(head).typical().hardnessPa();
    if (!HardnessRatio.canCut(instrument.part().hardnessPa(), hardness)) {
      return Exclusion.of(
          "softer-than-the-work", Message.of("label.material-" + work.material(head).id()));
    }
    if (sinks(work) && !instrument.properties().cutsAtTip()) {
      return Exclusion.of("no-tip");
    }
    return Windows.against(instrument.properties(), work, open)
        .or(() -> HardLimits.reaches(instrument, work, cutCase.outline()))
        .orElse(null);
  }

  /** Whether the tip has to cut: along the axis, or where nothing is open yet. */
  private static boolean sinks(Work work) {
    boolean opens =
        switch (work.operation().task()) {
          case OPEN, OUTLINE, BULK, APPROACH, ENTER ->
              work.operation().geometry().kind() == GeometryKind.POCKET;
          default -> false;
        };
    return opens || strokes(work).equals(List.of(Stroke.AXIAL));
  }

  private @Nullable Exclusion against(Instrument instrument, Handpiece handpiece, Work work) {
    return Windows.against(handpiece, work, open)
        .or(() -> HardLimits.bearsTheTurbine(instrument, handpiece))
        .orElse(null);
  }

  /**
   * Adds the cheapest operating point; near the pulp or a surface that stays, one for each speed.
   */
  private @Nullable Exclusion best(
      Instrument instrument, Handpiece handpiece, Work work, List<Candidate> found) {
    Exclusion why = null;
    Candidate best = null;
    boolean approaches = Purpose.of(work.operation().task()) == Purpose.APPROACH;
    for (double rpm : speeds(instrument, handpiece, work)) {
      for (double load : loads(work)) {
        for (Stroke stroke : strokes(work)) {
          Attempt attempt = points.at(instrument, handpiece, work, rpm, load, stroke);
          Candidate c = attempt.candidate();
          if (c == null) {
            why = attempt.exclusion();
          } else if (approaches) {
            found.add(c);
          } else if (best == null || c.literatureCostS() < best.literatureCostS()) {
            best = c;
          }
        }
      }
    }
    if (best != null) {
      found.add(best);
    }
    return why;
  }

  /** A turbine has one speed; what is geared is tried over what maker and window leave. */
  private double[] speeds(Instrument instrument, Handpiece handpiece, Work work) {
    double highest = HardLimits.highestRpm(instrument, handpiece);
    if (handpiece.drive() instanceof TurbineDrive) {
      return new double[] {highest};
    }
    Operating operating = work.operation().operating();
    boolean windowed = !open && operating.mostRpm() > 0;
    double most = windowed ? Math.min(highest, operating.mostRpm()) : highest;
    double least = windowed ? Math.min(most, operating.leastRpm()) : SLOWEST_SHARE * most;
    return levels(most, Math.max(1, least), true);
  }

  private double[] loads(Work work) {
    Operating operating = work.operation().operating();
    if (operating.mostN() > 0) {
      return levels(operating.mostN(), operating.leastN(), false);
    }
    boolean light = Purpose.of(work.operation().task()) != Purpose.BULK || work.wholeBelow();
    double[] usual = light ? LIGHT_N : BULK_N;
    return levels(usual[1], usual[0], false);
  }

  private double[] levels(double most, double least, boolean ratios) {
    if (most <= least) {
      return new double[] {most};
    }
    double[] levels = new double[open ? 2 : LEVELS];
    for (int i = 0; i < levels.length; i++) {
      double share = i / (levels.length - 1.0);
      levels[i] = ratios ? most * Math.pow(least / most, share) : most + share * (least - most);
    }
    return levels;
  }

  /** The strokes tried: in a slot both sides are met at once, so neither direction can be told. */
  public static List<Stroke> strokes(Work work) {
    String told = work.operation().operating().stroke();
    for (Stroke stroke : Stroke.values()) {
      if (stroke.id().equals(told)) {
        return List.of(stroke);
      }
    }
    if (work.operation().geometry().kind() == GeometryKind.SLOT) {
      return List.of(Stroke.BRUSHING);
    }
    return switch (Purpose.of(work.operation().task())) {
      case BULK, APPROACH -> List.of(Stroke.AGAINST_ROTATION, Stroke.WITH_ROTATION);
      case FINISH -> List.of(Stroke.WITH_ROTATION);
      case POLISH -> List.of(Stroke.BRUSHING);
    };
  }

  /**
   * Why an operation must not be led in a way, where it says how: a slot or a stroke of its own.
   */
  public static Optional<Exclusion> againstStroke(Work work, Stroke stroke) {
    boolean slot = work.operation().geometry().kind() == GeometryKind.SLOT;
    boolean told = slot || !work.operation().operating().stroke().isEmpty();
    return told && !strokes(work).contains(stroke)
        ? Optional.of(
            Exclusion.of(
                slot ? "both-walls-of-a-slot" : "stroke-not-for-this",
                Message.of("label.stroke-" + stroke.id())))
        : Optional.empty();
  }

  /** One instrument at one operating point, with every limit and veto looked at again. */
  public Attempt at(
      DrawerInstrument drawer,
      Handpiece handpiece,
      Work work,
      double setRpm,
      double loadN,
      Stroke stroke) {
    Exclusion always = excludedAlways.get(drawer.id());
    if (always != null) {
      return Attempt.not(always);
    }
    Instrument instrument =
        instruments.stream().filter(i -> i.drawer().equals(drawer)).findFirst().orElse(null);
    if (instrument == null || !HardLimits.fits(instrument, handpiece)) {
      return Attempt.not(new Exclusion("no-handpiece", Message.of("exclusion.no-handpiece-here")));
    }
    double highest = HardLimits.highestRpm(instrument, handpiece);
    if (setRpm > highest * (1 + 1e-9)) {
      return Attempt.not(Exclusion.of("too-fast", Rounded.places(highest, 0)));
    }
    Exclusion wrong = against(instrument, work);
    wrong = wrong == null ? against(instrument, handpiece, work) : wrong;
    if (wrong != null) {
      return Attempt.not(wrong);
    }
    return points.at(instrument, handpiece, work, setRpm, loadN, stroke);
  }

  /** The cheapest load of the operation for one instrument at one speed, led in one way. */
  public Attempt cheapest(
      DrawerInstrument drawer, Handpiece handpiece, Work work, double setRpm, Stroke stroke) {
    Attempt best = Attempt.not(Exclusion.of("working-part-unknown"));
    for (double load : loads(work)) {
      Attempt attempt = at(drawer, handpiece, work, setRpm, load, stroke);
      Candidate is = attempt.candidate();
      Candidate was = best.candidate();
      if (was == null || is != null && is.literatureCostS() < was.literatureCostS()) {
        best = attempt;
      }
    }
    return best;
  }

  /**
   * The highest speed an instrument may be set to in a handpiece: label, handpiece, whirl. 0 where
   * a turbine, which runs at full pedal, would turn it faster than it bears.
   */
  public static double highestRpm(Instrument instrument, Handpiece handpiece) {
    return HardLimits.bearsTheTurbine(instrument, handpiece).isPresent()
        ? 0
        : HardLimits.highestRpm(instrument, handpiece);
  }

  /** The highest speed one of the candidates may be set to. */
  public static double highestRpm(Candidate c) {
    return HardLimits.highestRpm(c.instrument(), c.handpiece());
  }

  /** True where the speed cannot be set: a turbine runs at full pedal. */
  public static boolean oneSpeed(Candidate c) {
    return c.handpiece().drive() instanceof TurbineDrive;
  }

  /** A candidate at another speed or load, or null where a limit forbids it. */
  public @Nullable Candidate again(Candidate old, double setRpm, double loadN) {
    return points
        .at(old.instrument(), old.handpiece(), old.work(), setRpm, loadN, old.stroke())
        .candidate();
  }
}
