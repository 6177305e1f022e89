package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.Forms;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;
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
  private static final double CONTROLLABLE_PULL_N = 0.25;
  private static final double REACTION_S = 0.3;
  private static final double SIDE_DEPTH_M = 50e-6;
  private static final double FINISH_DEPTH_M = 20e-6;
  private static final double OVERLAP = 1.2;
  private static final double PITCH_SHARE = 0.25;

  private final CutCase cutCase;
  private final List<Instrument> instruments;
  private final List<Veto> vetoes;
  private final RuleContext context;
  private final Map<String, Exclusion> excludedAlways = new TreeMap<>();

  /** Prepares a search over the drawer for a case. */
  public CandidateSearch(
      CutCase cutCase, List<DrawerInstrument> drawer, double depthM, List<Veto> vetoes) {
    this.cutCase = cutCase;
    this.vetoes = vetoes;
    this.context = new RuleContext(cutCase);
    List<Instrument> allowed = new ArrayList<>();
    for (DrawerInstrument d : drawer) {
      Instrument instrument = Instrument.of(d);
      if (instrument == null) {
        excludedAlways.put(
            d.id(),
            new Exclusion(
                "working-part-unknown", "has neither grit nor blades in the drawer list"));
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
        last =
            new Exclusion(
                "no-handpiece",
                "has a "
                    + instrument.properties().shank()
                    + " shank, no handpiece of the case takes it");
      }
      if (last != null) {
        out.put(instrument.drawer().id(), last);
      }
    }
    return new Found(segment, found, out);
  }

  private record Trial(@Nullable Candidate candidate, @Nullable Exclusion exclusion) {}

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
          Trial trial = at(instrument, handpiece, segment, share * highest, load, stroke);
          if (trial.candidate() == null) {
            why = trial.exclusion();
          } else if (best == null || trial.candidate().costS() < best.costS()) {
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
      return new Exclusion(
          "softer-than-the-work", "is too soft to cut " + segment.material().inSentence());
    }
    boolean polishes = instrument.part() instanceof AbrasivePart a && a.polishes();
    if (polishes != (segment.purpose() == Purpose.POLISH)) {
      return new Exclusion(
          "not-for-this-step", polishes ? "polishes and does not cut" : "cuts and does not polish");
    }
    ShapeFamily shape = instrument.properties().shape();
    if (segment.punch() && !shape.cutsAtTip()) {
      return new Exclusion("no-tip", "does not cut at its tip");
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

  /** One operating point; also used to work a chosen candidate out again after a remedy. */
  Trial at(
      Instrument instrument,
      Handpiece handpiece,
      Segment segment,
      double setRpm,
      double wantedLoadN,
      Stroke stroke) {
    double ratio = instrument.part().forceRatio();
    double load =
        stroke == Stroke.WITH_ROTATION
            ? Math.min(wantedLoadN, CONTROLLABLE_PULL_N / ratio)
            : wantedLoadN;
    double diameter = instrument.properties().headDiameter().metres();
    Torque torque = new Torque(ratio * load * diameter / 2);
    double rpm = handpiece.drive().speedUnder(torque, RotationalSpeed.ofRpm(setRpm)).rpm();
    if (rpm <= 0) {
      return new Trial(null, new Exclusion("stalls", "stalls in the " + handpiece.label()));
    }
    if (!HardLimits.neckHolds(instrument, load, torque.newtonMetres())) {
      return new Trial(null, new Exclusion("neck-stress", "has too thin a neck for the load"));
    }
    Candidate candidate = candidate(instrument, handpiece, segment, setRpm, load, stroke, rpm);
    for (Veto veto : vetoes) {
      Optional<Exclusion> no = veto.against(candidate, context);
      if (no.isPresent()) {
        return new Trial(null, no.get());
      }
    }
    return new Trial(candidate, null);
  }

  /** A candidate at another speed or load, or null where a limit forbids it. */
  public @Nullable Candidate again(Candidate old, double setRpm, double loadN) {
    return at(old.instrument(), old.handpiece(), old.segment(), setRpm, loadN, old.stroke())
        .candidate();
  }

  private Candidate candidate(
      Instrument instrument,
      Handpiece handpiece,
      Segment segment,
      double setRpm,
      double load,
      Stroke stroke,
      double rpm) {
    double flow = cutCase.coolant().millilitresPerMinute();
    Substance work = segment.material().typical();
    Engagement contact = contact(instrument, segment);
    double rim = Math.PI * contact.diameterM() * rpm / 60;
    OperatingPoint point = new OperatingPoint(load, rim, flow, instrument.part().sharpness());
    CutResult cut = instrument.part().cut(work, contact, point);
    double volume = segment.volumeM3();
    double lives = volume * instrument.part().livesPerM3(work, rim);
    double mean = cut.removalM3PerS() * Sharpness.meanOver(Math.min(lives, Sharpness.LIFE_END));
    double cutS = volume / mean * passesOverlap(contact);
    Substance left =
        segment.wholeBelow() && segment.below() != null ? segment.below().typical() : work;
    double ra = instrument.part().raM(left, cut) + ridge(instrument, segment);
    double damage =
        instrument.part() instanceof AbrasivePart
            ? Roughness.damageDepthM(ra, cut.unitLoadN(), cut.brittleShare(), work)
            : Roughness.damageDepthM(ra, 0, 0, work);
    double slip = slip(instrument, segment, contact, point, cut) * runAway(stroke);
    double risk = risk(instrument, segment, cut, damage, slip);
    Pace pace = Pace.usual(segment.purpose(), flow);
    return new Candidate(
        instrument,
        handpiece,
        segment,
        setRpm,
        load,
        stroke,
        rpm,
        rim,
        contact,
        cut,
        mean,
        lives,
        ra,
        damage,
        slip,
        cutS,
        pace.pausesS(cutS),
        risk,
        Prices.ofWear(instrument.properties().kind(), lives));
  }

  /**
   * How the head meets the stretch. At the tip speed grows from zero, so a mean diameter counts,
   * less where the end is flat and chips cannot get out (project settings).
   */
  static Engagement contact(Instrument instrument, Segment segment) {
    double diameter = instrument.properties().headDiameter().metres();
    if (segment.punch()) {
      double share = instrument.properties().shape().leavesSharpCorner() ? 0.5 : 2.0 / 3;
      return new Engagement(diameter * share, diameter / 2, SIDE_DEPTH_M);
    }
    double side =
        Math.max(
            0.2e-3,
            instrument.properties().headLength().metres()
                * instrument.properties().shape().sideFraction());
    double depth = segment.purpose() == Purpose.BULK ? SIDE_DEPTH_M : FINISH_DEPTH_M;
    return new Engagement(diameter, Math.max(0.2e-3, Math.min(side, segment.engagedM())), depth);
  }

  /**
   * Ridges between passes, 0.26 of their height counts as Ra: a ball leaves them on any surface, a
   * domed or pointed end on the floor of a cavity.
   */
  private double ridge(Instrument instrument, Segment segment) {
    ShapeFamily shape = instrument.properties().shape();
    boolean floor =
        cutCase.procedure() == Procedure.CAVITY_PREPARATION
            && cutCase.outline().shape().walled()
            && !shape.levelEnd();
    if (segment.purpose() == Purpose.POLISH || (shape != ShapeFamily.ROUND && !floor)) {
      return 0;
    }
    double diameter = instrument.properties().headDiameter().metres();
    return 0.26 * Roughness.ridgeM(PITCH_SHARE * diameter, diameter / 2);
  }

  /** How far the tip goes into what lies below before the hand reacts. */
  private double slip(
      Instrument instrument,
      Segment segment,
      Engagement contact,
      OperatingPoint point,
      CutResult cut) {
    if (Double.isInfinite(segment.marginM()) || segment.below() == null) {
      return 0;
    }
    double diameter = instrument.properties().headDiameter().metres();
    double foot =
        cutCase.outline().shape().walled()
            ? Math.PI / 4 * diameter * diameter
            : contact.engagedLengthM() * diameter;
    CutResult below =
        segment.below().id().equals(segment.material().id())
            ? cut
            : instrument.part().cut(segment.below().typical(), contact, point);
    return below.removalM3PerS() / foot * REACTION_S;
  }

  /** On an open surface a head shorter than the surface is wide goes over part of it twice. */
  private double passesOverlap(Engagement contact) {
    boolean whole =
        cutCase.outline().shape().walled()
            || contact.engagedLengthM() >= 0.95 * cutCase.outline().width().metres();
    return whole ? 1 : OVERLAP;
  }

  /** Pulled on, the instrument goes twice as far before the hand reacts (project setting). */
  private static double runAway(Stroke stroke) {
    return stroke == Stroke.WITH_ROTATION ? 2 : 1;
  }

  private double risk(
      Instrument instrument, Segment segment, CutResult cut, double damageM, double slipM) {
    double enamel =
        segment.wholeBelow() && cutCase.procedure() == Procedure.ADHESIVE_CLEAN_UP
            ? (slipM + damageM) * Prices.ENAMEL_S_PER_M
            : 0;
    boolean stays =
        cutCase.procedure() != Procedure.CROWN_SECTIONING && segment.material().group().stays();
    double damage = stays ? damageM * cut.brittleShare() * Prices.DAMAGE_S_PER_M : 0;
    double corner =
        cutCase.procedure() == Procedure.CAVITY_PREPARATION
                && instrument.properties().shape().leavesSharpCorner()
            ? Prices.SHARP_CORNER_S
            : 0;
    double form =
        Forms.wrongFor(cutCase, instrument.properties().shape()) ? Prices.WRONG_FORM_S : 0;
    return enamel + damage + corner + form + slipM * Prices.SLIP_S_PER_M;
  }
}
