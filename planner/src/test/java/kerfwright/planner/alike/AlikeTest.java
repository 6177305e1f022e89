package kerfwright.planner.alike;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import org.junit.jupiter.api.Test;

class AlikeTest {
  private static final String NUMBER = "806 314 197 534 014";

  private static InstrumentProperties numbered(String iso) {
    return InstrumentResolver.resolve(
            new DrawerFields(Map.of("iso", iso, "head_length_mm", "8.0", "max_rpm", "450000")))
        .orThrow();
  }

  private static InstrumentProperties taper(GritClass grit, double headMm, double overallMm) {
    return new InstrumentProperties(
        InstrumentKind.DIAMOND,
        null,
        null,
        ShapeFamily.TAPER_ROUND_END,
        "taper, round end",
        grit,
        null,
        false,
        Length.ofMillimetres(headMm),
        Length.ofMillimetres(8),
        ShankType.FG,
        Length.ofMillimetres(overallMm),
        null,
        List.of());
  }

  private static InstrumentProperties bur(int blades) {
    return new InstrumentProperties(
        InstrumentKind.CARBIDE,
        null,
        null,
        ShapeFamily.PEAR,
        "pear",
        null,
        blades,
        false,
        Length.ofMillimetres(1),
        Length.ofMillimetres(2),
        ShankType.FG,
        Length.ofMillimetres(19),
        null,
        List.of());
  }

  private static Alike to(InstrumentProperties wanted) {
    Alike alike = Alike.to(wanted);
    assertTrue(alike != null);
    return alike;
  }

  private static Neighbour only(InstrumentProperties wanted, InstrumentProperties other) {
    return to(wanted).among(List.of(Alike.asNew("N", other))).get(0);
  }

  private static Optional<Difference> difference(Neighbour neighbour, String code) {
    return neighbour.differences().stream().filter(d -> d.code().equals(code)).findFirst();
  }

  @Test
  void theSameNumberRanksFirstAndDiffersInNothing() {
    List<DrawerInstrument> drawer =
        List.of(
            Alike.asNew("finer", numbered("806 314 197 514 014")),
            Alike.asNew("wider", numbered("806 314 197 534 016")),
            Alike.asNew("same", numbered(NUMBER)),
            Alike.asNew("ball", numbered("806 314 001 534 014")));
    List<Neighbour> found = to(numbered(NUMBER)).among(drawer);
    assertEquals("same", found.get(0).instrument().id());
    assertEquals(100, found.get(0).score(), 1e-9);
    assertEquals(List.of(), found.get(0).differences());
    assertTrue(found.get(1).score() < 95, "the next one is told apart");
  }

  @Test
  void aFinerGritIsSlowerAndSmoother() {
    Neighbour finer = only(taper(GritClass.COARSE, 1.4, 19), taper(GritClass.EXTRA_FINE, 1.4, 19));
    List<Object> rough = difference(finer, "roughness").orElseThrow().remark().values();
    assertTrue(
        ((BigDecimal) rough.get(0)).compareTo((BigDecimal) rough.get(1)) < 0, rough::toString);
    assertTrue(keys(difference(finer, "removal")).contains("remark.ratio-slower"));
    assertTrue(difference(finer, "diameter").isEmpty());
    assertTrue(finer.standsIn());
  }

  private static List<String> keys(Optional<Difference> told) {
    return told.orElseThrow().remark().message().keys().toList();
  }

  @Test
  void theFartherTheGritTheLessAlike() {
    InstrumentProperties coarse = taper(GritClass.COARSE, 1.4, 19);
    double medium = only(coarse, taper(GritClass.MEDIUM, 1.4, 19)).score();
    double fine = only(coarse, taper(GritClass.FINE, 1.4, 19)).score();
    double extraFine = only(coarse, taper(GritClass.EXTRA_FINE, 1.4, 19)).score();
    assertTrue(medium > fine && fine > extraFine, medium + " " + fine + " " + extraFine);
  }

  @Test
  void aLongerNeckLowersTheWhirlLimit() {
    Neighbour longer = only(taper(GritClass.COARSE, 1.4, 19), taper(GritClass.COARSE, 1.4, 25));
    Difference whirl = difference(longer, "whirl").orElseThrow();
    assertTrue(whirl.distance() > 0);
    assertEquals(Difference.Effect.STOPS, whirl.effect(), whirl.toString());
    assertTrue(difference(longer, "roughness").isEmpty() || longer.score() < 100);
  }

  @Test
  void aWiderHeadDoesNotFitTheOpeningTheWantedOneFits() {
    Neighbour wider = only(taper(GritClass.COARSE, 1.4, 19), taper(GritClass.COARSE, 1.6, 19));
    Difference diameter = difference(wider, "diameter").orElseThrow();
    assertEquals(
        Message.of("remark.alike-wider", new BigDecimal("0.2"), new BigDecimal("1.45")),
        diameter.remark().message());
    assertFalse(wider.standsIn());
    Neighbour narrower = only(taper(GritClass.COARSE, 1.6, 19), taper(GritClass.COARSE, 1.4, 19));
    assertEquals(
        Message.of("remark.alike-narrower", new BigDecimal("0.2"), new BigDecimal("1.45")),
        difference(narrower, "diameter").orElseThrow().remark().message());
  }

  @Test
  void fewerBladesCutDentineFasterAndRougher() {
    Neighbour few = only(bur(12), bur(6));
    List<String> faster = keys(difference(few, "removal"));
    assertTrue(faster.contains("remark.ratio-faster"), faster::toString);
    assertTrue(faster.contains("label.material-dentine"), faster::toString);
    assertTrue(difference(few, "roughness").isPresent());
  }

  @Test
  void anotherShankIsTold() {
    InstrumentProperties bur = bur(6);
    InstrumentProperties latch =
        new InstrumentProperties(
            bur.kind(),
            null,
            null,
            bur.shape(),
            bur.shapeName(),
            null,
            6,
            false,
            bur.headDiameter(),
            bur.headLength(),
            ShankType.RA,
            Length.ofMillimetres(22),
            null,
            List.of());
    Neighbour other = only(bur, latch);
    assertTrue(difference(other, "shank").isPresent());
    assertFalse(other.standsIn());
  }

  @Test
  void aWornInstrumentIsLessAlikeThanANewOne() {
    InstrumentProperties p = taper(GritClass.COARSE, 1.4, 19);
    DrawerInstrument worn = new DrawerInstrument("worn", p, 4, 4, DrawerInstrument.State.USED);
    List<Neighbour> found = to(p).among(List.of(worn, Alike.asNew("new", p)));
    assertEquals("new", found.get(0).instrument().id());
    assertTrue(difference(found.get(1), "removal").isPresent());
    assertTrue(keys(difference(found.get(1), "state")).contains("instrument.state-used"));
  }

  @Test
  void theCatalogueOffersTheNextGritsAndSizesWithTheirNumbers() {
    List<Neighbour> found = to(numbered(NUMBER)).inCatalogue();
    assertTrue(found.size() > 10);
    assertTrue(
        found.stream()
            .anyMatch(n -> "806 314 197 524 014".equals(n.instrument().properties().iso())));
    assertTrue(
        found.stream().noneMatch(n -> NUMBER.equals(n.instrument().properties().iso())),
        "the wanted one itself is not offered");
    for (int i = 1; i < found.size(); i++) {
      assertTrue(found.get(i - 1).score() >= found.get(i).score());
    }
  }

  @Test
  void anInstrumentWithoutGritOrBladesIsNotCompared() {
    InstrumentProperties unknown =
        new InstrumentProperties(
            InstrumentKind.CARBIDE,
            null,
            null,
            ShapeFamily.PEAR,
            "pear",
            null,
            null,
            false,
            Length.ofMillimetres(1),
            Length.ofMillimetres(2),
            ShankType.FG,
            Length.ofMillimetres(19),
            null,
            List.of());
    assertNull(Alike.to(unknown));
  }
}
