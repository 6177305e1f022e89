package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.silhouette.ProfilePoint;
import kerfwright.catalogue.silhouette.Silhouette;

/** An instrument to scale, seen from the side, its tip to the left. */
public final class InstrumentDrawing {
  private static final double WIDTH = 320;
  private static final double SMALL_PER_MM = 7;
  private static final double SMALL_SHOWN_MM = 21;

  private InstrumentDrawing() {}

  /** Whole instrument, then its head enlarged, both with dimensions. */
  public static String full(String id, InstrumentProperties instrument) {
    Silhouette s = Silhouette.of(instrument);
    double perMm = Math.min(14, (WIDTH - 28) / s.overallMm());
    double tallest = perMm * Math.max(s.headWidthMm(), instrument.shank().diameter().millimetres());
    double axis = 42 + tallest / 2;
    double headPerMm =
        Math.max(perMm, Math.min(Math.min(190 / s.headEndMm(), 90 / s.headWidthMm()), 60));
    double headTop = axis + tallest / 2 + 52;
    double headAxis = headTop + s.headWidthMm() * headPerMm / 2;
    double headBottom = headAxis + s.headWidthMm() * headPerMm / 2;
    double height = headBottom + 58;
    Svg svg = Svg.image(id, WIDTH, height, title(instrument, s), description(instrument, s));
    double x = 14;
    body(svg, s, x, axis, perMm, s.overallMm());
    new HeadTexture(instrument, s).draw(svg, x, axis, perMm);
    flat(svg, instrument, s, x, axis, perMm);
    double ring = ring(svg, instrument, s, x, axis, perMm);
    double right = x + s.overallMm() * perMm;
    extension(svg, x, axis, 18);
    extension(svg, right, axis - tallest / 2, 18);
    Dimension.across(svg, x, right, 22, WIDTH, Figures.mm(s.overallMm()));
    if (ring > 0) {
      double label = axis + tallest / 2 + 20;
      svg.line(ring, axis + perMm * 0.8, ring, label - 10, Pen.THIN);
      svg.text(ring, label, Anchor.MIDDLE, Type.PLAIN, "ring: " + ringName(instrument));
    }
    head(svg, instrument, s, x + 4, headAxis, headPerMm);
    double half = s.headWidthMm() * headPerMm / 2;
    double end = x + 4 + s.headEndMm() * headPerMm;
    double dimension = end + 30;
    svg.line(end + 3, headAxis - half, dimension + 4, headAxis - half, Pen.THIN);
    svg.line(end + 3, headAxis + half, dimension + 4, headAxis + half, Pen.THIN);
    Dimension.down(
        svg,
        dimension,
        headAxis - half,
        headAxis + half,
        Anchor.START,
        Figures.mm(s.headWidthMm()));
    if (Math.abs(s.headEndMm() - instrument.headLength().millimetres()) < 0.005) {
      extension(svg, x + 4, headBottom + 16, headAxis);
      extension(svg, end, headBottom + 16, headAxis + half);
      Dimension.across(svg, x + 4, end, headBottom + 14, WIDTH, Figures.mm(s.headEndMm()));
    }
    String larger =
        headPerMm / perMm > 1.1
            ? "Lower drawing: head " + Figures.of(headPerMm / perMm) + " times larger. "
            : "Lower drawing: head again. ";
    String rule = s.assumed().get(0);
    int colon = rule.indexOf(':');
    svg.text(
        14,
        height - 22,
        Anchor.START,
        Type.QUIET,
        larger + Figures.capital(rule.substring(0, colon + 1)));
    svg.text(14, height - 8, Anchor.START, Type.QUIET, rule.substring(colon + 2) + ".");
    return svg.finish();
  }

  /**
   * Head, neck and the beginning of the shank without dimensions. The scale is the same for every
   * instrument, so that several may be compared.
   */
  public static String small(String id, InstrumentProperties instrument) {
    Silhouette s = Silhouette.of(instrument);
    double shown = Math.min(SMALL_SHOWN_MM, s.overallMm());
    double tall = SMALL_PER_MM * Math.max(s.headWidthMm(), 2.35);
    double axis = 4 + tall / 2;
    Svg svg =
        Svg.image(
            id,
            SMALL_SHOWN_MM * SMALL_PER_MM + 10,
            tall + 22,
            title(instrument, s),
            description(instrument, s));
    body(svg, s, 4, axis, SMALL_PER_MM, shown);
    new HeadTexture(instrument, s).draw(svg, 4, axis, SMALL_PER_MM);
    double ring = ring(svg, instrument, s, 4, axis, SMALL_PER_MM);
    if (ring > 0) {
      String words = "ring: " + ringName(instrument);
      double half = Type.QUIET.width(words) / 2;
      double at = Math.min(ring, SMALL_SHOWN_MM * SMALL_PER_MM + 8 - half);
      svg.text(at, tall + 18, Anchor.MIDDLE, Type.QUIET, words);
    }
    return svg.finish();
  }

  private static void extension(Svg svg, double x, double from, double to) {
    svg.line(x, from, x, to, Pen.THIN);
  }

  private static void body(
      Svg svg, Silhouette s, double x, double y, double perMm, double shownMm) {
    List<ProfilePoint> shank = new ArrayList<>();
    for (ProfilePoint p : concat(s.neck(), s.shank())) {
      shank.add(p.zMm() <= shownMm ? p : new ProfilePoint(shownMm, p.rMm()));
    }
    svg.polygon(mirrored(shank, x, y, perMm), Pen.BODY, "shank");
    svg.polygon(mirrored(s.head(), x, y, perMm), Pen.BODY, "head");
    if (shownMm < s.overallMm()) {
      double end = x + shownMm * perMm;
      double r = s.shank().get(0).rMm() * perMm + 2;
      svg.rect(end - 4, y - r, 2.5, 2 * r, Pen.PAPER);
      svg.line(end - 4, y + r, end - 4, y - r, Pen.THIN);
      svg.line(end - 1.5, y + r, end - 1.5, y - r, Pen.THIN);
    }
  }

  private static void head(
      Svg svg, InstrumentProperties instrument, Silhouette s, double x, double y, double perMm) {
    double neck = s.neckDiameterMm() / 2 * perMm;
    double end = x + s.headEndMm() * perMm;
    svg.rect(end, y - neck, 20, 2 * neck, Pen.BODY);
    svg.rect(end + 18, y - neck - 1, 4, 2 * neck + 2, Pen.PAPER);
    svg.polygon(mirrored(s.head(), x, y, perMm), Pen.BODY, "enlarged");
    new HeadTexture(instrument, s).draw(svg, x, y, perMm);
  }

  /** The flat of a latch shank, drawn to indicate it only. */
  private static void flat(
      Svg svg, InstrumentProperties i, Silhouette s, double x, double y, double perMm) {
    if (i.shank() == kerfwright.catalogue.instrument.ShankType.RA) {
      double r = i.shank().diameter().millimetres() / 2 * perMm;
      double end = x + s.overallMm() * perMm;
      svg.line(end - 5 * perMm, y - r * 0.4, end, y - r * 0.4, Pen.THIN);
      svg.line(end - 5 * perMm, y - r * 0.4, end - 5 * perMm, y - r, Pen.THIN);
    }
  }

  /** Draws the ring just behind the cone of the neck; where, or 0 if there is none. */
  private static double ring(
      Svg svg, InstrumentProperties instrument, Silhouette s, double x, double y, double perMm) {
    if (instrument.grit() == null) {
      return 0;
    }
    double r = instrument.shank().diameter().millimetres() / 2 * perMm;
    double from = x + (s.shankStartMm() + 0.3) * perMm;
    svg.rect(
        from, y - r, 0.9 * perMm, 2 * r, RingColour.named(instrument.grit().ring()).attributes());
    return from + 0.45 * perMm;
  }

  private static String ringName(InstrumentProperties instrument) {
    return instrument.grit() == null ? "" : instrument.grit().ring();
  }

  private static List<ProfilePoint> concat(List<ProfilePoint> a, List<ProfilePoint> b) {
    List<ProfilePoint> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }

  private static List<Svg.Point> mirrored(
      List<ProfilePoint> half, double x, double y, double perMm) {
    List<Svg.Point> outline = new ArrayList<>();
    half.forEach(p -> outline.add(new Svg.Point(x + p.zMm() * perMm, y - p.rMm() * perMm)));
    for (int i = half.size() - 1; i >= 0; i--) {
      ProfilePoint p = half.get(i);
      outline.add(new Svg.Point(x + p.zMm() * perMm, y + p.rMm() * perMm));
    }
    return outline;
  }

  private static String title(InstrumentProperties i, Silhouette s) {
    return Figures.capital(i.kind().label())
        + ", "
        + i.shapeName()
        + ", "
        + Figures.mm(s.headWidthMm());
  }

  private static String description(InstrumentProperties i, Silhouette s) {
    StringBuilder words = new StringBuilder("Seen from the side, to scale. Head diameter ");
    words.append(Figures.mm(s.headWidthMm())).append(", head length ");
    words.append(Figures.mm(i.headLength().millimetres())).append(", overall length ");
    words.append(Figures.mm(s.overallMm())).append(", ").append(i.shank().label());
    words.append(" shank ").append(i.shank().diameter().millimetres()).append(" mm. ");
    if (i.kind().bladed() && i.blades() != null) {
      words.append(i.blades()).append(" blades. ");
    }
    if (i.grit() != null) {
      words
          .append(Figures.capital(i.grit().label()))
          .append(" grit, ring ")
          .append(i.grit().ring());
      words.append(". ");
    }
    words.append(Figures.capital(s.assumed().get(0))).append(". ");
    i.assumed().forEach(a -> words.append(Figures.capital(a)).append(". "));
    return words.toString().strip();
  }
}
