package kerfwright.catalogue.silhouette;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.quantity.Length;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SilhouetteTest {

  @ParameterizedTest
  @MethodSource("everyListedShape")
  void keepsTheSizesOfEveryListedShape(InstrumentProperties instrument) {
    sizesHold(instrument);
  }

  @ParameterizedTest
  @EnumSource(ShapeFamily.class)
  void keepsTheSizesOfEveryFamilyOnEveryShankAndInEverySize(ShapeFamily family) {
    for (ShankType shank : ShankType.values()) {
      for (double diameter : new double[] {0.5, 1.0, 1.6, 2.35, 5.0, 10.0}) {
        for (double length : new double[] {0.4, 1.0, 3.0, 8.0, 12.0}) {
          sizesHold(instrument(family, family.label(), "", diameter, length, shank, 30));
        }
      }
    }
  }

  @Test
  void tellsAtLeastFortyShapeCodesApart() throws IOException {
    Set<List<ProfilePoint>> outlines = new HashSet<>();
    everyListedShape().forEach(i -> outlines.add(Silhouette.of(i).head()));
    assertTrue(outlines.size() >= 40, "only " + outlines.size() + " distinct outlines");
  }

  @Test
  void tellsEveryFamilyApartAtTheSameSize() {
    Set<List<ProfilePoint>> outlines = new HashSet<>();
    Arrays.stream(ShapeFamily.values())
        .filter(f -> f != ShapeFamily.DISC && f != ShapeFamily.WHEEL)
        .forEach(
            f ->
                outlines.add(
                    Silhouette.of(instrument(f, f.label(), "", 1.6, 6, ShankType.FG, 21)).head()));
    // a wheel, a disc and a cylinder of one size are the same block; an end-cutting cylinder
    // differs from a plain one by where it cuts
    assertEquals(ShapeFamily.values().length - 3, outlines.size());
    assertEquals(
        0.3,
        Silhouette.of(
                instrument(ShapeFamily.CYLINDER_END_CUTTING, "end", "", 1.6, 6, ShankType.FG, 21))
            .working()
            .get(0)
            .toMm());
  }

  @Test
  void drawsARoundHeadAsACircle() {
    Silhouette ball = Silhouette.of(instrument(ShapeFamily.ROUND, "round", "001", 1.8, 1.8));
    for (ProfilePoint p : ball.head()) {
      assertEquals(0.9, Math.hypot(p.zMm() - 0.9, p.rMm()), 1e-9);
    }
    assertTrue(ball.headEndMm() > 0.9 && ball.headEndMm() < 1.8);
  }

  @Test
  void keepsTheSideOfACylinderParallelAndOfAnInvertedConeNarrowingTowardsTheShank() {
    Silhouette cylinder =
        Silhouette.of(instrument(ShapeFamily.CYLINDER, "cylinder", "110", 1.2, 6));
    cylinder.head().stream()
        .filter(p -> p.rMm() > 0)
        .forEach(p -> assertEquals(0.6, p.rMm(), 1e-12));
    List<ProfilePoint> cone =
        Silhouette.of(instrument(ShapeFamily.INVERTED_CONE, "inverted cone", "010", 1.2, 1.0))
            .head();
    assertEquals(0.6, cone.get(1).rMm(), 1e-12);
    assertTrue(cone.get(cone.size() - 1).rMm() < 0.6);
  }

  @Test
  void tapersWithinAPlausibleAngle() {
    for (ShapeFamily family :
        List.of(
            ShapeFamily.TAPER_FLAT_END,
            ShapeFamily.TAPER_ROUND_END,
            ShapeFamily.TAPER_ROUNDED_EDGE,
            ShapeFamily.TORPEDO_TAPERED,
            ShapeFamily.TAPER_POINTED)) {
      for (double diameter : new double[] {0.9, 1.2, 1.6, 2.1}) {
        for (double length : new double[] {4, 6, 8, 10}) {
          List<ProfilePoint> head =
              Silhouette.of(instrument(family, family.label(), "", diameter, length)).head();
          ProfilePoint end = head.get(head.size() - 1);
          ProfilePoint before = head.get(head.size() - 2);
          double degrees =
              Math.toDegrees(Math.atan2(end.rMm() - before.rMm(), end.zMm() - before.zMm()));
          assertTrue(degrees >= 1 && degrees <= 15, family + " " + degrees);
        }
      }
    }
  }

  @Test
  void endsPointedFormsInAPointAndRoundFormsAcrossTheAxis() {
    List<ProfilePoint> flame =
        Silhouette.of(instrument(ShapeFamily.FLAME, "flame", "243", 1.2, 5)).head();
    List<ProfilePoint> round =
        Silhouette.of(
                instrument(ShapeFamily.CYLINDER_ROUND_END, "cylinder, round end", "140", 1.2, 5))
            .head();
    assertTrue(firstSlope(flame) < 1, "a pointed end starts below 45 degrees");
    assertTrue(firstSlope(round) > 5, "a round end starts across the axis");
  }

  @Test
  void readsFinerDifferencesFromTheNameOrTheCode() {
    assertEquals(
        Silhouette.of(instrument(ShapeFamily.BUD, "conical bud", "", 2.3, 4)).head(),
        Silhouette.of(instrument(ShapeFamily.BUD, "274", "806 314 274 524 023", 2.3, 4)).head());
    assertTrue(
        !Silhouette.of(instrument(ShapeFamily.BUD, "bud", "", 2.3, 4))
            .head()
            .equals(Silhouette.of(instrument(ShapeFamily.BUD, "bullet", "", 2.3, 4)).head()));
  }

  @Test
  void statesThatTheNeckIsAssumed() {
    Silhouette s = Silhouette.of(instrument(ShapeFamily.CYLINDER, "cylinder", "110", 1.0, 4));
    assertEquals(0.8, s.neckDiameterMm(), 1e-9);
    assertEquals(Remark.of("neck-rule", 0.75, 0.05, 0.9), s.assumed().get(0));
  }

  @Test
  void refusesAHeadLongerThanTheInstrument() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Silhouette.of(instrument(ShapeFamily.CYLINDER, "cylinder", "", 1, 20)));
  }

  private static double firstSlope(List<ProfilePoint> head) {
    ProfilePoint a = head.get(0);
    ProfilePoint b = head.get(1);
    return (b.rMm() - a.rMm()) / Math.max(1e-12, b.zMm() - a.zMm());
  }

  private static void sizesHold(InstrumentProperties instrument) {
    Silhouette s = Silhouette.of(instrument);
    List<ProfilePoint> all = s.profile();
    double diameter = instrument.headDiameter().millimetres();
    for (int i = 1; i < all.size(); i++) {
      assertTrue(all.get(i).zMm() >= all.get(i - 1).zMm() - 1e-9, "runs from tip to far end");
    }
    assertAll(
        instrument.shape() + " " + instrument.shapeName() + " " + diameter,
        () -> assertEquals(diameter, s.headWidthMm(), 1e-9),
        () -> assertEquals(instrument.overallLength().millimetres(), s.overallMm(), 1e-9),
        () -> assertEquals(0, all.get(0).zMm(), 1e-9),
        () -> assertEquals(0, all.get(0).rMm(), 1e-9),
        () -> assertEquals(s.head().get(s.head().size() - 1), s.neck().get(0)),
        () -> assertEquals(s.neck().get(s.neck().size() - 1), s.shank().get(0)),
        () -> assertTrue(s.neckDiameterMm() <= instrument.shank().diameter().millimetres()));
    if (instrument.shape() != ShapeFamily.ROUND) {
      assertEquals(instrument.headLength().millimetres(), s.headEndMm(), 1e-9);
    }
  }

  static Stream<InstrumentProperties> everyListedShape() throws IOException {
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(
                SilhouetteTest.class.getResourceAsStream("shapes-with-lengths.csv")),
            StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(in)
          .stream()
          .map(
              r ->
                  instrument(
                      Arrays.stream(ShapeFamily.values())
                          .filter(f -> f.label().equals(r.get("family")))
                          .findFirst()
                          .orElseThrow(),
                      r.get("shape_name"),
                      r.get("code"),
                      Double.parseDouble(r.get("head_mm")),
                      Double.parseDouble(r.get("head_length_mm")),
                      ShankType.FG,
                      Double.parseDouble(r.get("overall_mm"))))
          .toList()
          .stream();
    }
  }

  private static InstrumentProperties instrument(
      ShapeFamily family, String name, String iso, double diameter, double length) {
    return instrument(family, name, iso, diameter, length, ShankType.FG, 19);
  }

  private static InstrumentProperties instrument(
      ShapeFamily family,
      String name,
      String iso,
      double diameter,
      double length,
      ShankType shank,
      double overall) {
    return new InstrumentProperties(
        InstrumentKind.DIAMOND,
        iso.length() == 3 ? "806 314 " + iso + " 524 016" : iso,
        null,
        family,
        name,
        null,
        null,
        false,
        Length.ofMillimetres(diameter),
        Length.ofMillimetres(length),
        shank,
        Length.ofMillimetres(overall),
        null,
        List.of());
  }
}
