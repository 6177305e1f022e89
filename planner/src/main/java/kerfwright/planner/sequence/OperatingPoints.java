package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.catalogue.operation.Operating;
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
import kerfwright.planner.choice.PartCut;
import kerfwright.planner.operation.Pace;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.rule.Windows;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.Message;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.Torque;

/**
 * Works out what one instrument does at one operating point, and whether limits and vetoes allow
 * it.
 *
 * <p>A stroke with rotation is only as hard as a pull of 0.25 N allows; the hand reacts to a slip
 * in 0.3 s (project settings).
 */
final class OperatingPoints {
  private static final double CONTROLLABLE_PULL_N = 0.25;
  private static final double REACTION_S = 0.3;
  private static final double SIDE_DEPTH_M = 50e-6;
  private static final double FINISH_DEPTH_M = 20e-6;
  private static final double POLISHED_DEPTH_M = 1e-6;
  private static final double OVERLAP = 1.2;
  private static final double PITCH_SHARE = 0.25;
  private static final double LEAST_M = 0.2e-3;

  private final CutCase cutCase;
  private final List<Veto> vetoes;
  private final RuleContext context;
  private final OwnPace pace;
  private final boolean open;

  /**
   * Operating points in a case; with open windows the speed an operation asks for is not looked at.
   */
  OperatingPoints(CutCase cutCase, List<Veto> vetoes, OwnPace pace, boolean open) {
    this.cutCase = cutCase;
    this.vetoes = vetoes;
    this.context = new RuleContext(cutCase);
    this.pace = pace;
    this.open = open;
  }

  /** One operating point; also used to work a chosen candidate out again after a remedy. */
  Attempt at(
      Instrument instrument,
      Handpiece handpiece,
      Work work,
      double setRpm,
      double wantedLoadN,
      Stroke stroke) {
    double load =
        stroke == Stroke.WITH_ROTATION
            ? Math.min(wantedLoadN, CONTROLLABLE_PULL_N / instrument.part().greatestForceRatio())
            : wantedLoadN;
    double diameter = instrument.properties().headDiameter().metres();
    Material main = work.material(diameter);
    Engagement contact = contact(instrument, work, stroke);
    double ratio = instrument.part().forceRatio(main.typical(), contact, load);
    Torque torque = new Torque(ratio * load * diameter / 2);
    double rpm = handpiece.drive().speedUnder(torque, RotationalSpeed.ofRpm(setRpm)).rpm();
    if (rpm <= 0) {
      return Attempt.not("stalls", Message.of("label.handpiece-" + handpiece.id()));
    }
    Operating operating = work.operation().operating();
    if (!open && operating.mostRpm() > 0 && rpm > operating.mostRpm() * (1 + 1e-9)) {
      return Attempt.not("too-fast-under-load", rounded(rpm), rounded(operating.mostRpm()));
    }
    if (!open && rpm < operating.leastRpm() * (1 - 1e-9)) {
      return Attempt.not("too-slow-under-load", rounded(rpm), rounded(operating.leastRpm()));
    }
    if (!HardLimits.neckHolds(instrument, load, torque.newtonMetres())) {
      return Attempt.not("neck-stress");
    }
    Candidate candidate = candidate(instrument, handpiece, work, setRpm, load, stroke, rpm);
    for (Veto veto : vetoes) {
      Optional<Exclusion> no = veto.against(candidate, context);
      if (no.isPresent()) {
        return Attempt.not(no.get());
      }
    }
    return new Attempt(candidate, null);
  }

  private static Object rounded(double rpm) {
    return Rounded.places(rpm, 0);
  }

  private Candidate candidate(
      Instrument instrument,
      Handpiece handpiece,
      Work work,
      double setRpm,
      double load,
      Stroke stroke,
      double rpm) {
    double flow = cutCase.coolant().millilitresPerMinute();
    Engagement contact = contact(instrument, work, stroke);
    double rim = Math.PI * contact.diameterM() * rpm / 60;
    Pace strokes = Pace.of(work.operation(), flow);
    OperatingPoint point =
        new OperatingPoint(load, rim, flow, instrument.part().sharpness(), strokes.cutS());
    List<PartCut> parts = parts(instrument, work, contact, point);
    PartCut main = parts.get(0);
    Substance substance = main.material().typical();
    InstrumentKind kind = instrument.properties().kind();
    double ownPace = pace.time(main.material().id(), kind, instrument.drawer().uses());
    double ownWear = pace.wear(kind).typical();
    double usualLives = parts.stream().mapToDouble(PartCut::lives).sum();
    double lives = ownWear * usualLives;
    double overlap = overlap(work, contact);
    double least = leastS(work, contact);
    double sharpS = overlap * parts.stream().mapToDouble(PartCut::sharpS).sum();
    double steady = Candidate.steadyShare(parts);
    double usualS = Math.max(least, sharpS / meanSharp(instrument, usualLives, steady));
    double cutS = ownPace * Math.max(least, sharpS / meanSharp(instrument, lives, steady));
    CutResult cut = main.cut();
    Material below = work.below();
    Substance left = work.wholeBelow() && below != null ? below.typical() : substance;
    double ra = instrument.part().raM(left, cut) + ridge(instrument, work);
    boolean abrasive = instrument.part() instanceof AbrasivePart;
    double damage =
        abrasive
            ? Roughness.damageDepthM(ra, cut.unitLoadN(), cut.brittleShare(), substance)
            : Roughness.damageDepthM(ra, 0, 0, substance);
    double slip = slip(instrument, work, main, contact, point) * runAway(stroke);
    return new Candidate(
        instrument,
        handpiece,
        work,
        setRpm,
        load,
        stroke,
        rpm,
        rim,
        contact,
        parts,
        lives,
        ra,
        damage,
        slip,
        overlap,
        least,
        cutS,
        strokes.pausesS(cutS),
        risk(instrument, work, main, damage, slip),
        Prices.ofWear(kind, lives),
        ownPace,
        ownWear,
        usualS,
        strokes.pausesS(usualS),
        Windows.resort(instrument.properties(), work));
  }

  /** What each layer takes, the largest first; of a surface gone over, a breath. */
  private static List<PartCut> parts(
      Instrument instrument, Work work, Engagement contact, OperatingPoint point) {
    double head = instrument.properties().headDiameter().metres();
    List<PartCut> parts = new ArrayList<>();
    for (Work.Part part : work.parts()) {
      double volume = Math.max(part.volume().m3(head), thinnestM3(work));
      Substance substance = part.material().typical();
      parts.add(
          new PartCut(
              part.layer(),
              part.material(),
              volume,
              instrument.part().cut(substance, contact, point),
              volume * instrument.part().livesPerM3(substance, point.rimSpeedMPerS())));
    }
    parts.sort(Comparator.comparingDouble((PartCut p) -> -p.volumeM3()));
    return parts;
  }

  private static double thinnestM3(Work work) {
    return POLISHED_DEPTH_M * work.areaM2() / work.parts().size() + 1e-15;
  }

  private static double meanSharp(Instrument instrument, double lives, double steadyShare) {
    return instrument.part().meanOver(Math.min(lives, Sharpness.LIFE_END), steadyShare);
  }

  /**
   * Finishing and polishing take the passes over the surface, whatever little they remove; sources
   * ask for a time a grit besides.
   */
  private static double leastS(Work work, Engagement contact) {
    Purpose purpose = Purpose.of(work.operation().task());
    double told = work.operation().leastSeconds();
    if (purpose != Purpose.FINISH && purpose != Purpose.POLISH) {
      return told;
    }
    Sweep sweep = Sweep.of(work.operation());
    return Math.max(told, sweep.secondsOver(work.areaM2(), contact.engagedLengthM()));
  }

  /**
   * How the head meets the layer. At the tip speed grows from zero, so a mean diameter counts, less
   * where the end is flat and chips cannot get out; it rests on half of its foot, for the hand
   * leads it in small circles. A slot is first cut with half the round of the head, whatever is
   * widened after (project settings).
   */
  static Engagement contact(Instrument instrument, Work work, Stroke stroke) {
    InstrumentProperties p = instrument.properties();
    double diameter = p.headDiameter().metres();
    if (stroke == Stroke.AXIAL) {
      double share = p.shape().leavesSharpCorner() ? 0.5 : 2.0 / 3;
      return new Engagement(diameter * share, diameter / 2, diameter * share);
    }
    double side = Math.max(LEAST_M, p.headLength().metres() * p.shape().sideFraction());
    double engaged = Math.max(LEAST_M, Math.min(side, work.engagedM()));
    if (work.operation().geometry().kind() == GeometryKind.SLOT) {
      double full = Math.min(1, diameter / Math.max(diameter, work.slotWidthM()));
      return new Engagement(diameter, engaged, full * diameter / 2);
    }
    Purpose purpose = Purpose.of(work.operation().task());
    double depth = purpose == Purpose.BULK ? SIDE_DEPTH_M : FINISH_DEPTH_M;
    return new Engagement(diameter, engaged, depth);
  }

  /**
   * Ridges between passes, 0.26 of their height counts as Ra: a ball leaves them on any surface, a
   * domed or pointed end on the floor of a cavity.
   */
  private double ridge(Instrument instrument, Work work) {
    ShapeFamily shape = instrument.properties().shape();
    boolean floor =
        cutCase.procedure() == Procedure.CAVITY_PREPARATION
            && cutCase.outline().shape().walled()
            && !shape.levelEnd();
    boolean polishes = Purpose.of(work.operation().task()) == Purpose.POLISH;
    if (polishes || (shape != ShapeFamily.ROUND && !floor)) {
      return 0;
    }
    double diameter = instrument.properties().headDiameter().metres();
    return 0.26 * Roughness.ridgeM(PITCH_SHARE * diameter, diameter / 2);
  }

  /** How far the tip goes into what lies below before the hand reacts. */
  private double slip(
      Instrument instrument, Work work, PartCut main, Engagement contact, OperatingPoint point) {
    Material below = work.below();
    if (Double.isInfinite(work.marginM()) || below == null) {
      return 0;
    }
    double diameter = instrument.properties().headDiameter().metres();
    double foot =
        cutCase.outline().shape().walled()
            ? Math.PI / 4 * diameter * diameter
            : contact.engagedLengthM() * diameter;
    CutResult into =
        below.id().equals(main.material().id())
            ? main.cut()
            : instrument.part().cut(below.typical(), contact, point);
    return into.removalM3PerS() / foot * REACTION_S;
  }

  /** On an open surface a head shorter than the surface is wide goes over part of it twice. */
  private double overlap(Work work, Engagement contact) {
    boolean whole =
        cutCase.outline().shape().walled() || contact.engagedLengthM() >= 0.95 * work.engagedM();
    return whole ? 1 : OVERLAP;
  }

  /** Pulled on, the instrument goes twice as far before the hand reacts (project setting). */
  private static double runAway(Stroke stroke) {
    return stroke == Stroke.WITH_ROTATION ? 2 : 1;
  }

  private double risk(
      Instrument instrument, Work work, PartCut main, double damageM, double slipM) {
    double enamel =
        work.wholeBelow() && cutCase.procedure() == Procedure.ADHESIVE_CLEAN_UP
            ? (slipM + damageM) * Prices.ENAMEL_S_PER_M
            : 0;
    boolean stays =
        cutCase.procedure() != Procedure.CROWN_SECTIONING && main.material().group().stays();
    double damage = stays ? damageM * main.cut().brittleShare() * Prices.DAMAGE_S_PER_M : 0;
    double corner =
        cutCase.procedure() == Procedure.CAVITY_PREPARATION
                && instrument.properties().shape().leavesSharpCorner()
            ? Prices.SHARP_CORNER_S
            : 0;
    return enamel + damage + corner + slipM * Prices.SLIP_S_PER_M;
  }
}
