package kerfwright.app.drawing.instrument;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Anchor;
import kerfwright.app.drawing.Figures;
import kerfwright.app.drawing.Lines;
import kerfwright.app.drawing.Pen;
import kerfwright.app.drawing.RingColour;
import kerfwright.app.drawing.Svg;
import kerfwright.app.drawing.Type;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Remarks;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.silhouette.ProfilePoint;
import kerfwright.catalogue.silhouette.Silhouette;

/** An instrument to scale, seen from the side, its tip to the left. */
public final class InstrumentDrawing {
  private static final double WIDTH = 320;
  private static final double LINE = 14;
  private static final int WIDEST = 55;
  private static final double SMALL_PER_MM = 7;
  private static final double SMALL_SHOWN_MM = 21;

  private InstrumentDrawing() {}

  /** Whole instrument, then its head enlarged, both with dimensions. */
  public static String full(Say say, String id, InstrumentProperties instrument) {
    Silhouette s = Silhouette.of(instrument);
    double perMm = Math.min(14, (WIDTH - 28) / s.overallMm());
    double tallest = perMm * Math.max(s.headWidthMm(), instrument.shank().diameter().millimetres());
    double axis = 42 + tallest / 2;
    double headPerMm =
        Math.max(perMm, Math.min(Math.min(190 / s.headEndMm(), 90 / s.headWidthMm()), 60));
    double headTop = axis + tallest / 2 + 52;
    double headAxis = headTop + s.headWidthMm() * headPerMm / 2;
    double headBottom = headAxis + s.headWidthMm() * headPerMm / 2;
    List<String> notes = notes(say, s, headPerMm / perMm);
    double height = headBottom + 30 + LINE * notes.size();
    Svg svg =
        Svg.image(id, WIDTH, height, title(say, instrument, s), description(say, instrument, s));
    double x = 14;
    body(svg, s, x, axis, perMm, s.overallMm());
    new HeadTexture(instrument, s).draw(svg, new Pose(x, axis, perMm, false));
    flat(svg, instrument, s, x, axis, perMm);
    double ring = ring(svg, instrument, s, x, axis, perMm);
    double right = x + s.overallMm() * perMm;
    extension(svg, x, axis, 18);
    extension(svg, right, axis - tallest / 2, 18);
    Dimension.across(svg, x, right, 22, WIDTH, Figures.mm(say, s.overallMm()));
    if (ring > 0) {
      double label = axis + tallest / 2 + 20;
      svg.line(ring, axis + perMm * 0.8, ring, label - 10, Pen.THIN);
      svg.text(ring, label, Anchor.MIDDLE, Type.PLAIN, ringName(say, instrument));
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
        Figures.mm(say, s.headWidthMm()));
    if (Math.abs(s.headEndMm() - instrument.headLength().millimetres()) < 0.005) {
      extension(svg, x + 4, headBottom + 16, headAxis);
      extension(svg, end, headBottom + 16, headAxis + half);
      Dimension.across(svg, x + 4, end, headBottom + 14, WIDTH, Figures.mm(say, s.headEndMm()));
    }
    for (int i = 0; i < notes.size(); i++) {
      double line = headBottom + 36 + LINE * i;
      svg.text(14, line, Anchor.START, Type.QUIET, notes.get(i));
    }
    return svg.finish();
  }

  /** How much larger the head is drawn again, and what is assumed of the neck. */
  private static List<String> notes(Say say, Silhouette s, double larger) {
    String lower =
        larger > 1.1
            ? say.at("drawn.instrument-larger", Figures.of(say, larger))
            : say.at("drawn.instrument-again");
    String rule = Remarks.in(say, s.assumed()).get(0);
    return Lines.of(say, lower + " " + say.at("drawn.sentence", Figures.capital(rule)), WIDEST);
  }

  /**
   * Head, neck and the beginning of the shank without dimensions. The scale is the same for every
   * instrument, so that several may be compared.
   */
  public static String small(Say say, String id, InstrumentProperties instrument) {
    return small(say, id, instrument, true);
  }

  /** The same without the name of its ring, for captions beside it. */
  public static String bare(Say say, String id, InstrumentProperties instrument) {
    return small(say, id, instrument, false);
  }

  private static String small(Say say, String id, InstrumentProperties instrument, boolean named) {
    Silhouette s = Silhouette.of(instrument);
    double shown = Math.min(SMALL_SHOWN_MM, s.overallMm());
    double tall = SMALL_PER_MM * Math.max(s.headWidthMm(), 2.35);
    double axis = 4 + tall / 2;
    Svg svg =
        Svg.image(
            id,
            SMALL_SHOWN_MM * SMALL_PER_MM + 10,
            tall + (named ? 22 : 8),
            title(say, instrument, s),
            description(say, instrument, s));
    body(svg, s, 4, axis, SMALL_PER_MM, shown);
    new HeadTexture(instrument, s).draw(svg, new Pose(4, axis, SMALL_PER_MM, false));
    double ring = ring(svg, instrument, s, 4, axis, SMALL_PER_MM);
    if (named && ring > 0) {
      String words = ringName(say, instrument);
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
    svg.polygon(new Pose(x, y, perMm, false).mirrored(shank), Pen.BODY, "shank");
    svg.polygon(new Pose(x, y, perMm, false).mirrored(s.head()), Pen.BODY, "head");
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
    svg.polygon(new Pose(x, y, perMm, false).mirrored(s.head()), Pen.BODY, "enlarged");
    new HeadTexture(instrument, s).draw(svg, new Pose(x, y, perMm, false));
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

  private static String ringName(Say say, InstrumentProperties instrument) {
    GritClass grit = instrument.grit();
    return grit == null ? "" : say.at("drawn.instrument-ring", Labels.ring(say, grit));
  }

  private static List<ProfilePoint> concat(List<ProfilePoint> a, List<ProfilePoint> b) {
    List<ProfilePoint> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }

  private static String title(Say say, InstrumentProperties i, Silhouette s) {
    return say.at(
        "drawn.instrument-title",
        Figures.capital(Labels.kind(say, i.kind())),
        Labels.shape(say, i.shapeName()),
        Figures.mm(say, s.headWidthMm()));
  }

  private static String description(Say say, InstrumentProperties i, Silhouette s) {
    List<String> words = new ArrayList<>();
    words.add(
        say.at(
            "drawn.instrument-about",
            Figures.mm(say, s.headWidthMm()),
            Figures.mm(say, i.headLength().millimetres()),
            Figures.mm(say, s.overallMm()),
            say.at("plan.shank", Labels.shank(say, i.shank())),
            Figures.mm(say, i.shank().diameter().millimetres())));
    if (i.kind().bladed() && i.blades() != null) {
      words.add(say.at("drawn.sentence", say.at("plan.blades", i.blades())));
    }
    GritClass grit = i.grit();
    if (grit != null) {
      words.add(
          Figures.capital(
              say.at("drawn.instrument-grit", Labels.grit(say, grit), Labels.ring(say, grit))));
    }
    List<String> assumed = new ArrayList<>(Remarks.in(say, s.assumed()));
    assumed.addAll(Remarks.in(say, i.assumed()));
    assumed.forEach(one -> words.add(say.at("drawn.sentence", Figures.capital(one))));
    return String.join(" ", words);
  }
}
