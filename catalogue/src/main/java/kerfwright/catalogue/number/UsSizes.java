package kerfwright.catalogue.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.instrument.Characteristics;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingParts;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;

/** US bur sizes both ways: from a number to the bur, and from a bur to the numbers that fit. */
public final class UsSizes {
  /** The tolerance of the head diameter in the steel-bur table read (standards-s11). */
  private static final double DIAMETER_TOLERANCE_MM = 0.05;

  private static final List<UsSize> ALL = Topic.read("us-size/values.csv", UsSizes::size);

  private UsSizes() {}

  public static List<UsSize> all() {
    return ALL;
  }

  /** The size with this number; "No. 330", "#330", "33½" and "33-1/2" are understood. */
  public static Optional<UsSize> find(String number) {
    String wanted = folded(number);
    return all().stream().filter(size -> folded(size.number()).equals(wanted)).findFirst();
  }

  /** Numbers nearest to one that is none. */
  public static List<String> suggestions(String typed) {
    return NearestName.suggestions(folded(typed), all().stream().map(UsSize::number).toList(), 3);
  }

  /**
   * Sizes that fit a bur, best first: same shape family, diameter within the tolerance of the bur
   * table, cross cuts alike. Unknown or different blades and head lengths lower the confidence and
   * are named. Other kinds than burs have no US size.
   */
  public static List<UsMatch> matching(InstrumentProperties bur) {
    if (bur.kind() != InstrumentKind.CARBIDE && bur.kind() != InstrumentKind.STEEL) {
      return List.of();
    }
    List<UsMatch> matches = new ArrayList<>();
    for (UsSize size : all()) {
      double apart = Math.abs(size.headDiameter().metres() - bur.headDiameter().metres());
      if (size.family() == bur.shape()
          && apart <= DIAMETER_TOLERANCE_MM * 1e-3 + 1e-9
          && size.crossCut() == bur.crossCut()) {
        matches.add(match(size, bur));
      }
    }
    matches.sort(
        Comparator.comparing((UsMatch m) -> m.doubts().size()).thenComparing(UsMatch::confidence));
    return List.copyOf(matches);
  }

  /**
   * ISO 6360 numbers that may stand for a size as a carbide or steel bur with a standard shank;
   * several where the toothing leaves a choice, none where the shape code is not known.
   */
  public static List<IsoCandidate> isoCandidates(
      UsSize size, InstrumentKind kind, ShankType shankType) {
    String isoShape = size.isoShape();
    List<String> groups = WorkingParts.groupsOf(kind);
    if (isoShape == null || groups.isEmpty()) {
      return List.of();
    }
    String material = groups.get(0);
    String shank = Shanks.standard(shankType).code();
    List<IsoCandidate> candidates = new ArrayList<>();
    for (String toothing : toothings(size)) {
      var row = Characteristics.byCode(toothing).orElseThrow();
      Confidence confidence =
          size.provenance()
              .confidence()
              .and(row.provenance().confidence())
              .and(
                  Shapes.byCode(isoShape)
                      .map(s -> s.provenance().confidence())
                      .orElse(Confidence.LOW));
      candidates.add(
          new IsoCandidate(
              IsoNumber.of(material, shank, isoShape, toothing, size.isoSize()),
              row.provenance().basis() == Basis.FROM_MEMORY
                  ? Basis.FROM_MEMORY
                  : size.provenance().basis(),
              confidence,
              row.meaning() + "; nominal size nearest to the diameter"));
    }
    return List.copyOf(candidates);
  }

  private static List<String> toothings(UsSize size) {
    if (size.finishing()) {
      return List.of("071", "072");
    }
    if (size.crossCut()) {
      return List.of("007");
    }
    return size.series().contains("fissure") ? List.of("006", "001") : List.of("001");
  }

  private static UsMatch match(UsSize size, InstrumentProperties bur) {
    List<String> doubts = new ArrayList<>();
    Integer blades = bur.blades();
    Integer low = size.bladesLow();
    Integer high = size.bladesHigh();
    if (low == null || high == null) {
      doubts.add("usual number of blades of No. " + size.number() + " not known");
    } else if (blades == null) {
      doubts.add("number of blades of the instrument not known");
    } else if (blades < low || blades > high) {
      doubts.add(
          "No. "
              + size.number()
              + " usually has "
              + low
              + (low.equals(high) ? "" : " to " + high)
              + " blades, the instrument has "
              + blades);
    }
    Length length = size.headLength();
    if (length == null) {
      doubts.add("head length of No. " + size.number() + " not known");
    } else if (Math.abs(length.millimetres() - bur.headLength().millimetres()) > 0.5) {
      doubts.add(
          String.format(
              Locale.ROOT,
              "head length of No. %s is %.1f mm, of the instrument %.1f mm",
              size.number(),
              length.millimetres(),
              bur.headLength().millimetres()));
    }
    Confidence confidence = size.provenance().confidence();
    if (!doubts.isEmpty()) {
      confidence = confidence.and(doubts.size() > 1 ? Confidence.LOW : Confidence.MEDIUM);
    }
    return new UsMatch(size, confidence, doubts);
  }

  private static String folded(String number) {
    return number
        .strip()
        .toUpperCase(Locale.ROOT)
        .replaceFirst("^(US|NO\\.?|#|\\s)+", "")
        .replace("\u00bd", " 1/2")
        .replace("\u00bc", " 1/4")
        .replaceAll("[\\s-]+", " ")
        .replaceAll(" (?=[A-Z])", "")
        .strip();
  }

  private static UsSize size(DataRow row) {
    ShapeFamily family = row.requiredOneOf("family", ShapeFamily.class);
    Integer low = row.whole("blades_low");
    Integer high = row.whole("blades_high");
    if ((low == null) != (high == null) || low != null && high != null && low > high) {
      row.expected("blades_high", "both ends, low not above high, or neither");
    }
    return new UsSize(
        row.required("number"),
        row.required("series"),
        row.required("shape"),
        family,
        Length.ofMillimetres(row.requiredPositive("head_diameter_mm")),
        row.millimetres("head_length_mm"),
        low,
        high,
        row.yes("cross_cut"),
        row.group("iso_size"),
        row.text("iso_shape").isEmpty() ? null : row.group("iso_shape"),
        row.provenance());
  }
}
