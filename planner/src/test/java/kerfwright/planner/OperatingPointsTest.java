package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.SpeedClass;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.PartCut;
import kerfwright.planner.operation.Pace;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.sequence.Archetypes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
import kerfwright.planner.sequence.Prices;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.Shaft;
import org.junit.jupiter.api.Test;

/** What is told of an instrument at one operating point, worked out a second time. */
class OperatingPointsTest {
  private static final double EXACT = 1e-9;

  /** Cases that go every way: walled and open, slots, sweeps, whole below, decay, polish. */
  private static List<CutCase> cases() {
    return List.of(
        ACase.of(Procedure.CROWN_PREPARATION)
            .layer("enamel", 1.2)
            .layer("dentine", 4)
            .outline(Outline.Shape.PATCH, 10, 9)
            .build(),
        ACase.of(Procedure.ACCESS_CAVITY)
            .tooth(46)
            .layer("enamel", 1.2)
            .layer("dentine", 3.2)
            .build(),
        ACase.of(Procedure.CAVITY_PREPARATION)
            .tooth(36)
            .layer("enamel", 1)
            .layer("carious-dentine", 1)
            .layer("dentine", 2.4)
            .build(),
        ACase.of(Procedure.INLAY_CAVITY)
            .tooth(36)
            .layer("enamel", 1.2)
            .layer("dentine", 3.6)
            .outline(Outline.Shape.RECTANGLE, 5, 2.4)
            .build(),
        ACase.of(Procedure.ADHESIVE_CLEAN_UP)
            .tooth(13)
            .layer("adhesive-resin-aged", 0.2)
            .layer("enamel", 0.9)
            .keepAll("enamel")
            .outline(Outline.Shape.PATCH, 4, 3)
            .build(),
        ACase.of(Procedure.CROWN_SECTIONING)
            .pulp(PulpState.NON_VITAL)
            .layer("zirconia-3y", 1)
            .layer("resin-cement", 0.08)
            .layer("dentine", 3)
            .outline(Outline.Shape.SLOT, 10.5, 1.4)
            .build(),
        ACase.of(Procedure.FINISH_CERAMIC)
            .layer("lithium-disilicate", 1.5)
            .layer("dentine", 3)
            .outline(Outline.Shape.PATCH, 3, 2)
            .build());
  }

  private static List<Candidate> candidates(CutCase c) {
    CandidateSearch search =
        new CandidateSearch(c, DemoDrawer.full().instruments(), List.of(), OwnPace.NONE, true);
    return Operations.laid(c).works().stream()
        .flatMap(w -> search.on(w).candidates().stream())
        .toList();
  }

  private static void near(double wanted, double found, String what) {
    assertEquals(wanted, found, EXACT * Math.max(1e-12, Math.abs(wanted)), what);
  }

  private static Purpose purpose(Candidate c) {
    return Purpose.of(c.work().operation().task());
  }

  private static boolean slot(Candidate c) {
    return c.work().operation().geometry().kind() == GeometryKind.SLOT;
  }

  @Test
  void theHeadMeetsTheLayerAsItsStrokeHasIt() {
    Set<String> seen = new TreeSet<>();
    for (CutCase of : cases()) {
      for (Candidate c : candidates(of)) {
        InstrumentProperties is = c.instrument().properties();
        double d = is.headDiameter().metres();
        Engagement contact = c.contact();
        if (c.stroke() == Stroke.AXIAL) {
          double share = is.shape().leavesSharpCorner() ? 1 / 2.0 : 2 / 3.0;
          near(share * d, contact.diameterM(), "mean diameter at the tip");
          near(d / 2, contact.engagedLengthM(), "half of the foot");
          near(share * d, contact.depthOfCutM(), "as deep");
          seen.add("axial");
        } else {
          double side = Math.max(0.2e-3, is.headLength().metres() * is.shape().sideFraction());
          near(d, contact.diameterM(), "head");
          near(
              Math.max(0.2e-3, Math.min(side, c.work().engagedM())),
              contact.engagedLengthM(),
              "side within the wall");
          double wide = c.work().slotWidthM();
          double depth =
              slot(c)
                  ? (wide > d ? d / wide : 1) * d / 2
                  : purpose(c) == Purpose.BULK ? 50e-6 : 20e-6;
          near(depth, contact.depthOfCutM(), "depth of " + c.work().operation().id());
          seen.add(slot(c) ? wide > d ? "wide slot" : "full slot" : "side");
        }
        near(Math.PI * contact.diameterM() * c.underLoadRpm() / 60, c.rimMPerS(), "rim speed");
      }
    }
    assertTrue(seen.containsAll(List.of("axial", "side", "wide slot")), seen.toString());
  }

  private static double told(Operation operation, String name, double usual) {
    var formula = operation.geometry().terms().get(name);
    return formula == null ? usual : formula.value(any -> usual);
  }

  @Test
  void timeIsWhatTheModelsGiveAndNoLessThanTheTradeAsks() {
    Set<Purpose> bound = EnumSet.noneOf(Purpose.class);
    boolean twice = false;
    for (CutCase of : cases()) {
      boolean walled = of.outline().shape().walled();
      for (Candidate c : candidates(of)) {
        Operation operation = c.work().operation();
        double engaged = c.contact().engagedLengthM();
        double least = operation.leastSeconds();
        if (purpose(c) == Purpose.FINISH || purpose(c) == Purpose.POLISH) {
          double travel = told(operation, "travel", 2.5) * 1e-3;
          double passes = told(operation, "passes", 2);
          least = Math.max(least, passes * c.work().areaM2() / (engaged * travel));
          bound.add(purpose(c));
        }
        near(least, c.leastS(), operation.id());
        boolean part = !walled && engaged < 0.95 * c.work().engagedM();
        twice |= part;
        near(part ? 1.2 : 1, c.overlap(), "gone over twice in part");
        double sharp = 0;
        double lives = 0;
        for (PartCut one : c.parts()) {
          double volume = partOf(c, one);
          near(volume, one.volumeM3(), "volume");
          sharp += one.volumeM3() / one.cut().removalM3PerS();
          lives += one.lives();
        }
        near(lives, c.lives(), "lives");
        double mean =
            c.instrument()
                .part()
                .meanOver(Math.min(lives, Sharpness.LIFE_END), Candidate.steadyShare(c.parts()));
        near(Math.max(least, c.overlap() * sharp / mean), c.cutS(), "cutting time");
        near(c.cutS(), c.literatureCutS(), "the practice's own pace is none");
        Pace pace = Pace.of(operation, of.coolant().millilitresPerMinute());
        near(pace.pausesS(c.cutS()), c.pauseS(), "pauses");
        near(pace.pausesS(c.cutS()), c.literaturePauseS(), "pauses of the literature");
        near(Prices.ofWear(c.instrument().properties().kind(), lives), c.wearS(), "wear");
        TimedCut timed = new TimedCut(c, pace);
        near(pace.pausesS(c.cutS()), timed.pausesS(), "pauses");
        near(c.cutS() + timed.pausesS(), timed.timeS(), "with pauses");
        near(c.heatS() + pace.pausesS(c.heatS()), timed.heatS(), "time of the heat");
      }
    }
    assertEquals(EnumSet.of(Purpose.FINISH, Purpose.POLISH), bound);
    assertTrue(twice);
  }

  /** At least a micrometre over the surface, shared among the layers. */
  private static double partOf(Candidate c, PartCut one) {
    double head = c.instrument().properties().headDiameter().metres();
    double laid =
        c.work().parts().stream()
            .filter(part -> part.layer() == one.layer())
            .mapToDouble(part -> part.volume().m3(head))
            .findFirst()
            .orElseThrow();
    return Math.max(laid, 1e-6 * c.work().areaM2() / c.work().parts().size() + 1e-15);
  }

  @Test
  void surfaceSlipAndRiskFollowTheirFormulas() {
    Set<String> seen = new TreeSet<>();
    for (CutCase of : cases()) {
      for (Candidate c : candidates(of)) {
        InstrumentProperties is = c.instrument().properties();
        Substance substance = c.material().typical();
        Material below = c.work().below();
        Substance left = c.work().wholeBelow() && below != null ? below.typical() : substance;
        double ridge = ridgeM(of, c, seen);
        near(c.instrument().part().raM(left, c.cut()) + ridge, c.raM(), "Ra");
        boolean grains = c.instrument().part() instanceof AbrasivePart;
        near(
            Roughness.damageDepthM(
                c.raM(),
                grains ? c.cut().unitLoadN() : 0,
                grains ? c.cut().brittleShare() : 0,
                substance),
            c.damageM(),
            "damage");
        near(slipM(of, c, seen), c.slipM(), "slip of " + c.work().operation().id());
        boolean cleanUp = of.procedure() == Procedure.ADHESIVE_CLEAN_UP && c.work().wholeBelow();
        double risk = c.slipM() * 10 / 100e-6;
        if (cleanUp) {
          risk += (c.slipM() + c.damageM()) * 20 / 1e-6;
          seen.add("enamel to spare");
        }
        if (of.procedure() != Procedure.CROWN_SECTIONING && c.material().group().stays()) {
          risk += c.damageM() * c.cut().brittleShare() * 0.5 / 1e-6;
          seen.add("damage stays");
        } else {
          seen.add("damage goes");
        }
        if (of.procedure() == Procedure.CAVITY_PREPARATION && is.shape().leavesSharpCorner()) {
          risk += 12;
          seen.add("sharp corner");
        }
        near(risk, c.riskS(), "risk");
      }
    }
    assertTrue(
        seen.containsAll(
            List.of(
                "enamel to spare",
                "damage stays",
                "damage goes",
                "ridge of a ball",
                "no ridge",
                "slip walled",
                "slip open",
                "no slip")),
        seen.toString());
  }

  private static double ridgeM(CutCase of, Candidate c, Set<String> seen) {
    ShapeFamily shape = c.instrument().properties().shape();
    boolean floor =
        of.procedure() == Procedure.CAVITY_PREPARATION
            && of.outline().shape().walled()
            && !shape.levelEnd();
    if (purpose(c) == Purpose.POLISH || shape != ShapeFamily.ROUND && !floor) {
      seen.add("no ridge");
      return 0;
    }
    seen.add("ridge of a ball");
    double d = c.instrument().properties().headDiameter().metres();
    double step = 0.25 * d;
    return 0.26 * step * step / (8 * d / 2);
  }

  private static double slipM(CutCase of, Candidate c, Set<String> seen) {
    Material below = c.work().below();
    if (Double.isInfinite(c.work().marginM()) || below == null) {
      seen.add("no slip");
      return 0;
    }
    double d = c.instrument().properties().headDiameter().metres();
    boolean walled = of.outline().shape().walled();
    seen.add(walled ? "slip walled" : "slip open");
    double foot = walled ? Math.PI * d * d / 4 : c.contact().engagedLengthM() * d;
    double flow = of.coolant().millilitresPerMinute();
    CutResult into =
        below.id().equals(c.material().id())
            ? c.cut()
            : c.instrument()
                .part()
                .cut(
                    below.typical(),
                    c.contact(),
                    new OperatingPoint(
                        c.loadN(),
                        c.rimMPerS(),
                        flow,
                        c.instrument().part().sharpness(),
                        Pace.of(c.work().operation(), flow).cutS()));
    double once = into.removalM3PerS() / foot * 0.3;
    return c.stroke() == Stroke.WITH_ROTATION ? 2 * once : once;
  }

  @Test
  void whatCouldBeAddedFitsTheWindowItIsMeantFor() {
    Set<String> seen = new TreeSet<>();
    for (CutCase of : cases()) {
      for (Work work : Operations.laid(of).works()) {
        var window = work.operation().window();
        List<SpeedClass> speeds = work.operation().operating().speeds();
        boolean slow = speeds.isEmpty() || speeds.contains(SpeedClass.LOW);
        boolean fast = speeds.isEmpty() || speeds.stream().anyMatch(s -> s != SpeedClass.LOW);
        List<DrawerInstrument> could = Archetypes.fitting(work);
        int forms = Math.max(1, Math.min(2, window.forms().size()));
        assertEquals(
            window.kinds().size() * forms * ((slow ? 1 : 0) + (fast ? 1 : 0)), could.size());
        Set<ShankType> shanks = EnumSet.noneOf(ShankType.class);
        for (DrawerInstrument one : could) {
          InstrumentProperties is = one.properties();
          shanks.add(is.shank());
          boolean elastic =
              is.kind() == InstrumentKind.POLISHER || is.kind() == InstrumentKind.DISC;
          double most = work.slotWidthM() > 0 ? 0.8 * work.slotWidthM() : work.headMostM();
          double head = Math.max(work.headLeastM(), Math.min(most, elastic ? 6e-3 : 1.2e-3)) * 1e3;
          double reach = Math.max(4, work.reachM() * 1e3);
          near(head, is.headDiameter().millimetres(), "head");
          near(is.shape() == ShapeFamily.ROUND ? head : reach, is.headLength().millimetres(), "");
          boolean grip = is.shank() == ShankType.FG;
          near(Math.max(grip ? 19 : 22, 10 + reach), is.overallLength().millimetres(), "length");
          near(elastic ? 15_000 : grip ? 450_000 : 40_000, is.maximumSpeed().rpm(), "speed");
          if (is.kind().bladed()) {
            int blades = window.leastBlades() > 0 ? window.leastBlades() : 6;
            assertEquals(blades, is.blades());
            assertEquals(null, is.grit());
          } else {
            GritClass coarsest =
                window.grits().stream().sorted().findFirst().orElse(GritClass.MEDIUM);
            assertEquals(coarsest, is.grit());
            assertEquals(null, is.blades());
          }
          assertEquals(
              window.safeEnd() && is.shape() != ShapeFamily.ROUND
                  || is.shape() == ShapeFamily.TAPER_SAFE_END,
              is.safeEnd());
          String abrasive = window.abrasive().isEmpty() ? "diamond" : window.abrasive();
          assertEquals(elastic ? abrasive : "", is.abrasive());
          seen.add(is.safeEnd() ? "safe" : "cutting");
          seen.add(work.slotWidthM() > 0 ? "slot" : "no slot");
          seen.add(elastic ? "elastic" : "stiff");
        }
        assertEquals(slow, shanks.contains(ShankType.RA), work.operation().id());
        assertEquals(fast, shanks.contains(ShankType.FG), work.operation().id());
      }
    }
    assertTrue(seen.containsAll(List.of("slot", "no slot", "elastic", "stiff")), seen.toString());
  }

  private static DrawerInstrument diamond(String id, double head, double length, double overall) {
    return AnInstrument.any(id, InstrumentKind.DIAMOND, GritClass.COARSE, null)
        .size(head, length, overall)
        .build();
  }

  @Test
  void whatIsTooShortOrTooThinIsRefusedWithItsFigures() {
    CutCase deep =
        ACase.of(Procedure.ACCESS_CAVITY)
            .tooth(46)
            .layer("enamel", 1.2)
            .layer("dentine", 5.6)
            .build();
    DrawerInstrument shortOne = diamond("SHORT", 1.2, 2, 16);
    DrawerInstrument longOne = diamond("LONG", 1.2, 9, 25);
    CandidateSearch search =
        new CandidateSearch(deep, List.of(shortOne, longOne), List.of(), OwnPace.NONE, true);
    int refused = 0;
    for (Work work : Operations.laid(deep).works()) {
      Found found = search.on(work);
      double reach = Instrument.of(shortOne).reachM(deep.outline().width().metres());
      var why = found.out().get("SHORT");
      boolean tooShort = why != null && why.code().equals("too-short");
      if (why == null || tooShort) {
        assertEquals(reach < work.reachM() - 1e-6, tooShort, work.operation().id());
      }
      if (tooShort) {
        refused++;
        String said = why.message().toString();
        assertTrue(said.contains(figure(reach * 1e3)), said);
        assertTrue(said.contains(figure(work.reachM() * 1e3)), said);
      }
      var other = found.out().get("LONG");
      assertFalse(other != null && other.code().equals("too-short"), work.operation().id());
    }
    assertTrue(refused > 0);
    CutCase crown = cases().get(0);
    Work wall =
        Operations.laid(crown).works().stream()
            .filter(w -> w.operation().id().equals("lingual-wall"))
            .findFirst()
            .orElseThrow();
    DrawerInstrument thin = diamond("THIN", 1.2, 9, 30);
    var handpiece =
        crown.handpieces().stream()
            .filter(h -> h.id().equals("electric-1to5"))
            .findFirst()
            .orElseThrow();
    CandidateSearch thinSearch =
        new CandidateSearch(crown, List.of(thin), List.of(), OwnPace.NONE, true);
    Set<String> said = new TreeSet<>();
    for (double load = 2; load <= 30; load += 2) {
      var pressed = thinSearch.at(thin, handpiece, wall, 20_000, load, Stroke.AGAINST_ROTATION);
      double stress = Instrument.of(thin).shaft().neckStressPa(load, 0);
      if (pressed.candidate() != null) {
        assertTrue(stress <= Shaft.NECK_LIMIT_PA, "pressed with " + load);
      } else {
        said.add(pressed.exclusion().code());
      }
    }
    assertTrue(said.contains("neck-stress"), said.toString());
    assertTrue(
        thinSearch.at(thin, handpiece, wall, 20_000, 0.5, Stroke.AGAINST_ROTATION).candidate()
            != null);
  }

  /** As the sentence says it: one place. */
  private static String figure(double mm) {
    return Double.toString(Math.round(mm * 10) / 10.0);
  }

  @Test
  void aTurbineTurnsOnlyWhatBearsItsFreeSpeed() {
    CutCase crown = cases().get(0);
    ToDoubleFunction<Double> highest =
        maker -> {
          DrawerInstrument one =
              AnInstrument.any("D", InstrumentKind.DIAMOND, GritClass.COARSE, null)
                  .maximum(maker)
                  .build();
          var turbine =
              crown.handpieces().stream()
                  .filter(h -> h.id().equals("turbine"))
                  .findFirst()
                  .orElseThrow();
          return CandidateSearch.highestRpm(Instrument.of(one), turbine);
        };
    double free =
        crown.handpieces().stream()
            .filter(h -> h.id().equals("turbine"))
            .findFirst()
            .orElseThrow()
            .drive()
            .freeSpeed()
            .rpm();
    assertEquals(0, highest.applyAsDouble(free - 1));
    assertEquals(free, highest.applyAsDouble(free), 1e-6);
    assertEquals(free, highest.applyAsDouble(free + 50_000), 1e-6);
  }
}
