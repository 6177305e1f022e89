package kerfwright.planner.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.operation.Task;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the operations of a case come to. */
class LayingTest {
  private static final double ROUND = 1e-6;

  private static Laying lay(String variant, CutCase c) {
    return Laying.of(c, OperationTable.packaged().operations(variant));
  }

  private static double mm3(Laying laid, double headMm) {
    return laid.works().stream().mapToDouble(w -> w.volumeM3(headMm * 1e-3)).sum() * 1e9;
  }

  private static double mm3(Laying laid, double headMm, Set<String> ids) {
    return laid.works().stream()
            .filter(w -> ids.contains(w.operation().id()))
            .mapToDouble(w -> w.volumeM3(headMm * 1e-3))
            .sum()
        * 1e9;
  }

  private static Work work(Laying laid, String id) {
    return laid.works().stream()
        .filter(w -> w.operation().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> ids(Laying laid) {
    return laid.works().stream().map(w -> w.operation().id()).toList();
  }

  private static double areaMm2(CutCase c) {
    return c.outline().areaM2() * 1e6;
  }

  /** Whatever is opened first and straightened later, in the end the opening is cut out, once. */
  @ParameterizedTest
  @CsvSource({
    "access-natural-molar, 46, 1.5",
    "access-natural-premolar, 15, 0.95",
  })
  void anAccessAddsUpToItsOpeningTimesItsDepth(String variant, int fdi, double pilot) {
    CutCase c = LaidCases.access(fdi, "enamel", 1.0, "dentine", 3.4);
    assertEquals(areaMm2(c) * 4.4, mm3(lay(variant, c), pilot), ROUND);
  }

  @Test
  void decayThatIsClearedFirstIsNotCutTwice() {
    CutCase c = LaidCases.access(46, "enamel", 1.0, "carious-dentine", 0.8, "dentine", 2.6);
    Laying laid = lay("access-natural-molar", c);
    assertEquals("clear-decay", ids(laid).get(0));
    assertEquals(areaMm2(c) * 4.4, mm3(laid, 1.5), ROUND);
  }

  /** In front teeth the lingual shoulder, in the root canal, comes on top. */
  @Test
  void theAccessOfAFrontToothAddsUpBesideItsShoulder() {
    CutCase c = LaidCases.access(21, "enamel", 0.6, "dentine", 4.6);
    Laying laid = lay("access-natural-anterior", c);
    double shoulder = work(laid, "remove-lingual-shoulder").volumeM3(1e-3) * 1e9;
    assertEquals(areaMm2(c) * 5.2, mm3(laid, 1.05) - shoulder, ROUND);
  }

  @Test
  void throughAMetalCeramicCrownTheLedgeInThePorcelainComesOnTop() {
    CutCase c = LaidCases.ofEveryVariant().get("access-metal-ceramic");
    Laying laid = lay("access-metal-ceramic", c);
    double a = 2;
    double b = 1.5;
    double perimeter = Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
    double pilotRatherThanPierce = Math.PI / 4 * (1.1 * 1.1 - 1.2 * 1.2) * 0.4;
    assertEquals(
        areaMm2(c) * 4.72 + 0.4 * perimeter * 1.2 - pilotRatherThanPierce, mm3(laid, 1.2), ROUND);
  }

  /** Section 10, case 2: said from the cusp tip, stop mark 1 mm short, and what to do below. */
  @Test
  void depthIsSaidFromTheCuspTip() {
    CutCase c = LaidCases.access(46, "enamel", 0.98, "dentine", 3.38);
    Laying laid = lay("access-natural-molar", c);
    assertEquals(List.of(5.36, 6.36, 7.36), laid.cues().get(0).saidMm());
    assertEquals(List.of(5.36), work(laid, "deepen-dentine").saidMm());
    assertEquals(
        "Message[key=operation.access-natural-molar.enter-chamber.stop, values=[6.36, 7.36]]",
        work(laid, "enter-chamber").text("stop").toString());
    assertEquals(3.36e-3, work(laid, "deepen-dentine").toM(), 1e-12);
  }

  @Test
  void onAFrontToothDepthIsSaidFromTheLingualSurface() {
    CutCase c = LaidCases.access(21, "enamel", 0.6, "dentine", 4.6);
    assertEquals(List.of(4.2, 5.2, 6.2), lay("access-natural-anterior", c).cues().get(0).saidMm());
  }

  /**
   * Grooves, planes, reductions and finish make up the faces times their reductions, exactly. The
   * bevel of the working cusp is a face of its own; line and rounded edges come on top and stay
   * within a tenth of the whole.
   */
  @ParameterizedTest
  @CsvSource({
    "crown-posterior-metal-ceramic, 16, 1.4, 1.35, 0.6, 0.9",
    "crown-posterior-ceramic, 36, 1.5, 1.25, 1.0, 1.0",
    "crown-posterior-metal, 17, 1.0, 0.65, 0.65, 0.5",
    "crown-posterior-metal-ceramic, 14, 1.4, 1.35, 0.6, 0.9"
  })
  void aCrownAddsUpToItsFacesTimesTheirReductions(
      String variant, int fdi, double occlusal, double facial, double lingual, double proximal) {
    CutCase c =
        LaidCases.of("crown-preparation", fdi, PulpState.VITAL, "enamel", 1.0, "dentine", 3.2);
    Laying laid = lay(variant, c);
    double faces =
        LaidCases.size("S_o", c, variant) * occlusal
            + LaidCases.size("S_f", c, variant) * facial
            + LaidCases.size("S_l", c, variant) * lingual
            + 2 * LaidCases.size("S_p", c, variant) * proximal;
    Set<String> onTop = Set.of("functional-cusp-bevel", "finish-line", "round-angles");
    double above = mm3(laid, 1.2, onTop);
    assertEquals(faces, mm3(laid, 1.2) - above, 1e-6);
    double bevel = mm3(laid, 1.2, Set.of("functional-cusp-bevel"));
    assertEquals(faces + bevel, mm3(laid, 1.2), 0.1 * (faces + bevel));
  }

  /** Section 10, case 6. */
  @Test
  void aCrownIsAtLeastTenOperationsWithGroovesBeforeTheirReduction() {
    CutCase c = LaidCases.ofEveryVariant().get("crown-posterior-metal-ceramic");
    Laying laid = lay("crown-posterior-metal-ceramic", c);
    List<String> ids = ids(laid);
    assertTrue(ids.size() >= 10, ids.toString());
    assertTrue(ids.indexOf("occlusal-grooves") < ids.indexOf("reduce-occlusal"));
    assertTrue(ids.indexOf("axial-grooves") < ids.indexOf("facial-gingival-plane"));
    double bulk = work(laid, "reduce-occlusal").operation().operating().mostRpm();
    assertTrue(work(laid, "finish-line").operation().operating().mostRpm() <= bulk / 2);
    assertTrue(work(laid, "finish-walls").operation().operating().mostRpm() <= bulk / 2);
  }

  @Test
  void aFilmIsNoStepOfItsOwnWhereItIsCutThrough() {
    for (String variant : List.of("access-metal-ceramic", "access-zirconia", "sectioning-metal")) {
      for (Work work : lay(variant, LaidCases.ofEveryVariant().get(variant)).works()) {
        assertFalse(
            work.parts().stream().allMatch(p -> p.material().has(Trait.FILM)),
            variant + "." + work.operation().id());
      }
    }
    Work dentine =
        work(
            lay("access-metal-ceramic", LaidCases.ofEveryVariant().get("access-metal-ceramic")),
            "deepen-dentine");
    assertEquals(
        List.of("zinc-phosphate", "dentine"),
        dentine.parts().stream().map(p -> p.material().id()).toList());
  }

  @Test
  void aFilmIsTheWorkWhereItIsTakenOff() {
    Laying laid = lay("adhesive-clean-up", LaidCases.ofEveryVariant().get("adhesive-clean-up"));
    assertEquals("plane-remnant", ids(laid).get(0));
    assertTrue(laid.works().get(0).wholeBelow());
  }

  /** Section 10, case 4: the slot never needs a bur as wide as itself. */
  @Test
  void aHeadIsNarrowerThanTheSlotItCuts() {
    CutCase c = LaidCases.ofEveryVariant().get("sectioning-zirconia");
    Laying laid = lay("sectioning-zirconia", c);
    Work slot = work(laid, "slot-facial");
    assertEquals(1.4e-3, slot.slotWidthM(), 1e-12);
    assertEquals(1.12e-3, slot.headMostM(), 1e-12);
    assertTrue(ids(laid).contains("thin-last-skin"));
    assertTrue(laid.cues().stream().anyMatch(q -> q.operation().id().equals("spread-crown")));
    assertTrue(work(laid, "thin-last-skin").wholeBelow(), "the tooth below is not touched");
  }

  @Test
  void withoutASlotInTheCaseTheSlotIsAFifthWiderThanTheHead() {
    CutCase c =
        LaidCases.with(
            "crown-sectioning",
            16,
            PulpState.VITAL,
            LaidCases.outline(Outline.Shape.RECTANGLE, 10.5, 1.4),
            "zirconia-3y",
            1.0,
            "resin-cement",
            0.08,
            "dentine",
            2.0);
    Work slot = work(lay("sectioning-zirconia", c), "slot-facial");
    assertEquals(0, slot.slotWidthM());
    assertEquals(1.2 * 1.0 * 0.8 * 0.57 * 10.5, slot.volumeM3(1.0e-3) * 1e9, 1e-9);
  }

  /** Section 10, case 7: stops at 0.5 mm of zirconia. */
  @Test
  void anAdjustmentStopsWhereTheCrownBecomesTooThin() {
    CutCase c =
        LaidCases.with(
            "occlusal-adjustment",
            16,
            PulpState.VITAL,
            LaidCases.outline(Outline.Shape.PATCH, 1.5, 1.2),
            "zirconia-3y",
            0.6,
            "dentine",
            3.0);
    Laying laid = lay("adjust-zirconia", c);
    assertEquals(0.1e-3, work(laid, "reduce-mark").toM(), 1e-12);
    assertEquals("operation-cut-short", laid.findings().get(0).code());
    CutCase thin =
        LaidCases.with(
            "occlusal-adjustment",
            16,
            PulpState.VITAL,
            c.outline(),
            "zirconia-3y",
            0.5,
            "dentine",
            3);
    Laying none = lay("adjust-zirconia", thin);
    assertFalse(ids(none).contains("reduce-mark"));
    assertEquals("operation-left-out", none.findings().get(0).code());
  }

  @Test
  void whatTheCaseKeepsIsLeftWhereItAsksForMore() {
    CutCase c =
        LaidCases.keeping(
            LaidCases.of("crown-preparation", 16, PulpState.VITAL, "enamel", 1.0, "dentine", 1.5),
            new Keep("dentine", Length.ofMillimetres(1.4)));
    assertEquals(
        1.1e-3, work(lay("crown-posterior-metal-ceramic", c), "reduce-occlusal").toM(), 1e-12);
  }

  @Test
  void finishingBeginsWhereTheCoarserGritEndsAndAllWallsArePressedAlike() {
    for (String material : List.of("ceramic", "metal-ceramic", "metal")) {
      String variant = "crown-posterior-" + material;
      Laying laid = lay(variant, LaidCases.ofEveryVariant().get(variant));
      Work finish = work(laid, "finish-walls");
      assertEquals(work(laid, "facial-gingival-plane").toM(), finish.fromM(), 1e-12, variant);
      assertTrue(finish.toM() - finish.fromM() < 0.06e-3, "scratches alone");
      var lingual = work(laid, "lingual-wall").operation().operating();
      var proximal = work(laid, "proximal-walls").operation().operating();
      assertEquals(lingual.leastN(), proximal.leastN(), variant);
      assertEquals(lingual.mostN(), proximal.mostN(), variant);
    }
  }

  @Test
  void aDeadPulpAsksForNoDentine() {
    Object[] thin = {"enamel", 0.6, "dentine", 0.8};
    CutCase vital = LaidCases.of("crown-preparation", 16, PulpState.VITAL, thin);
    CutCase dead = LaidCases.of("crown-preparation", 16, PulpState.NON_VITAL, thin);
    String variant = "crown-posterior-metal-ceramic";
    assertEquals(0.9e-3, work(lay(variant, vital), "reduce-occlusal").toM(), 1e-12);
    assertEquals(1.37e-3, work(lay(variant, dead), "reduce-occlusal").toM(), 1e-12);
    assertEquals(HeatTarget.PULP_WALL, work(lay(variant, vital), "reduce-occlusal").heat());
    assertEquals(HeatTarget.NONE, work(lay(variant, dead), "reduce-occlusal").heat());
  }

  /** Section 10, case 5. */
  @Test
  void deepDecayIsLeftToTheHandOverThePulp() {
    CutCase c = LaidCases.ofEveryVariant().get("cavity-carious-deep");
    Laying laid = lay("cavity-carious-deep", c);
    for (Work work : laid.works()) {
      if (work.parts().stream().allMatch(p -> p.material().has(Trait.CARIOUS))) {
        assertTrue(work.operation().operating().mostRpm() <= 4000, work.operation().id());
        assertTrue(work.wholeBelow(), "no sound dentine is cut from the floor");
      }
    }
    assertTrue(
        laid.cues().stream()
            .anyMatch(
                q -> q.operation().id().equals("excavate-over-pulp") && q.why() == Cue.Why.HAND));
  }

  /** Section 10, case 10. */
  @Test
  void aFibrePostIsFreedThenHollowedAtTheRootsLimit() {
    Laying laid = lay("post-removal-fibre", LaidCases.ofEveryVariant().get("post-removal-fibre"));
    assertEquals(List.of("remove-core", "expose-collar", "pilot-hole", "hollow-post"), ids(laid));
    Work hollow = work(laid, "hollow-post");
    assertEquals(List.of(5.0, 9.0), hollow.saidMm());
    assertEquals(HeatTarget.ROOT_SURFACE, hollow.heat());
    assertTrue(hollow.operation().operating().mostRpm() <= 5000);
    assertTrue(
        laid.works().stream().noneMatch(w -> w.heat() == HeatTarget.PULP_WALL),
        "no pulp is left to be judged");
  }

  /** Bulk stops three errors short of a roof read on a film, at least 1 mm. */
  @ParameterizedTest
  @CsvSource({"0.3, 1.0", "0.5, 1.5"})
  void bulkStopsThreeErrorsShortOfTheRoof(double errorMm, double standOffMm) {
    CutCase c = LaidCases.access(46, "enamel", 1.0, "dentine", 3.4);
    Laying laid = lay("access-natural-molar", LaidCases.withChamber(c, 6.4, errorMm, Known.FILM));
    assertEquals(4.4 - standOffMm, work(laid, "deepen-dentine").toM() * 1e3, 1e-9);
    assertEquals(
        List.of(6.4 - standOffMm, 6.4, 7.4),
        laid.cues().get(0).saidMm().stream().map(mm -> Math.rint(mm * 1e6) / 1e6).toList());
  }

  /** A mean of the literature is no reading: it asks for a film and leaves 1 mm meanwhile. */
  @Test
  void aMeanIsNotTakenForAReading() {
    CutCase c = LaidCases.access(46, "enamel", 1.0, "dentine", 3.4);
    Laying laid = lay("access-natural-molar", LaidCases.withChamber(c, 6.4, 0.9, Known.USUAL));
    assertEquals(3.4, work(laid, "deepen-dentine").toM() * 1e3, 1e-9);
  }

  @Test
  void aThinRoofLeavesOutTheBulkNotTheEntry() {
    Laying laid = lay("access-natural-molar", LaidCases.access(46, "enamel", 1.0, "dentine", 0.9));
    assertFalse(ids(laid).contains("deepen-dentine"));
    assertTrue(ids(laid).contains("enter-chamber"));
    assertEquals(
        List.of(Task.OUTLINE, Task.APPROACH),
        laid.works().stream().map(w -> w.operation().task()).limit(2).toList());
  }

  @Test
  void takingOneRowAwayChangesThePlan() {
    CutCase c = LaidCases.access(46, "enamel", 1.0, "dentine", 3.4);
    List<Operation> all = OperationTable.packaged().operations("access-natural-molar");
    List<Operation> fewer = all.stream().filter(o -> !o.id().equals("remove-roof")).toList();
    assertTrue(mm3(Laying.of(c, fewer), 1.5) < mm3(Laying.of(c, all), 1.5) - 1);
  }

  @Test
  void everyVolumeIsSharedAmongTheLayersOnItsWay() {
    Laying laid = lay("access-natural-molar", LaidCases.access(46, "enamel", 1.0, "dentine", 3.4));
    Work walls = work(laid, "straighten-walls");
    double[] shares = walls.parts().stream().mapToDouble(p -> p.volume().m3(1e-3)).toArray();
    assertEquals(1.0 / 2.4, shares[0] / shares[1], 1e-9, Arrays.toString(shares));
  }
}
