package kerfwright.planner.sequence;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.OwnPace;
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
import kerfwright.quantity.Message;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * Works out what one instrument does at one operating point, and whether limits and vetoes allow
 * it.
 *
 * <p>A stroke with rotation is only as hard as a pull of 0.25 N allows; the hand reacts to a slip
 * in 0.3 s (project settings).
 */
final class Trials {
  private static final double CONTROLLABLE_PULL_N = 0.25;
  private static final double REACTION_S = 0.3;
  private static final double SIDE_DEPTH_M = 50e-6;
  private static final double FINISH_DEPTH_M = 20e-6;
  private static final double OVERLAP = 1.2;
  private static final double PITCH_SHARE = 0.25;

  private final CutCase cutCase;
  private final List<Veto> vetoes;
  private final RuleContext context;
  private final OwnPace pace;

  Trials(CutCase cutCase, List<Veto> vetoes, OwnPace pace) {
    this.cutCase = cutCase;
    this.vetoes = vetoes;
    this.context = new RuleContext(cutCase);
    this.pace = pace;
  }

  /** What came of a trial: a candidate, or why there is none. */
  record Trial(@Nullable Candidate candidate, @Nullable Exclusion exclusion) {}

  /** One operating point; also used to work a chosen candidate out again after a remedy. */
  Trial at(
      Instrument instrument,
      Handpiece handpiece,
      Segment segment,
      double setRpm,
      double wantedLoadN,
      Stroke stroke) {
    double load =
        stroke == Stroke.WITH_ROTATION
            ? Math.min(wantedLoadN, CONTROLLABLE_PULL_N / instrument.part().greatestForceRatio())
            : wantedLoadN;
    double ratio =
        instrument
            .part()
            .forceRatio(segment.material().typical(), contact(instrument, segment), load);
    double diameter = instrument.properties().headDiameter().metres();
    Torque torque = new Torque(ratio * load * diameter / 2);
    double rpm = handpiece.drive().speedUnder(torque, RotationalSpeed.ofRpm(setRpm)).rpm();
    if (rpm <= 0) {
      return new Trial(
          null, Exclusion.of("stalls", Message.of("label.handpiece-" + handpiece.id())));
    }
    if (!HardLimits.neckHolds(instrument, load, torque.newtonMetres())) {
      return new Trial(null, Exclusion.of("neck-stress"));
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
    String material = segment.material().id();
    InstrumentKind kind = instrument.properties().kind();
    double ownPace = pace.time(material, kind, instrument.drawer().uses());
    double ownWear = pace.wear(kind).typical();
    double usualLives = volume * instrument.part().livesPerM3(work, rim);
    double lives = ownWear * usualLives;
    double mean =
        cut.removalM3PerS() * instrument.part().meanOver(Math.min(lives, Sharpness.LIFE_END));
    double usual =
        cut.removalM3PerS() * instrument.part().meanOver(Math.min(usualLives, Sharpness.LIFE_END));
    double usualS = volume / usual * passesOverlap(contact);
    double cutS = ownPace * (volume / mean * passesOverlap(contact));
    Substance left =
        segment.wholeBelow() && segment.below() != null ? segment.below().typical() : work;
    double ra = instrument.part().raM(left, cut) + ridge(instrument, segment);
    double damage =
        instrument.part() instanceof AbrasivePart
            ? Roughness.damageDepthM(ra, cut.unitLoadN(), cut.brittleShare(), work)
            : Roughness.damageDepthM(ra, 0, 0, work);
    double slip = slip(instrument, segment, contact, point, cut) * runAway(stroke);
    double risk = risk(instrument, segment, cut, damage, slip);
    Pace strokes = Pace.usual(segment.purpose(), flow);
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
        strokes.pausesS(cutS),
        risk,
        Prices.ofWear(kind, lives),
        ownPace,
        ownWear,
        usualS,
        strokes.pausesS(usualS));
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
