package kerfwright.catalogue.number;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.catalogue.instrument.Characteristic;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.HeadLength;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.Shank;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingPart;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/**
 * Turns a row of a drawer list into an instrument: number and catalogue fill what is blank,
 * contradictions are faults, and everything filled in that the number does not say is listed as
 * assumed.
 *
 * <p>The greatest speed is never filled in: it stands on the maker's label. An overall length known
 * from memory only is not filled in either, because the speed an overhanging shaft bears hangs on
 * it. Grit and number of blades stay unknown where neither row, number nor catalogue tells.
 */
public final class InstrumentResolver {
  /**
   * Head diameters further apart than this contradict (tolerance of the bur table, standards-s11).
   */
  private static final double DIAMETER_TOLERANCE_MM = 0.06;

  /** Overall lengths further apart than this contradict; texts round 19 and 22 mm to 20 mm. */
  private static final double OVERALL_TOLERANCE_MM = 2.5;

  private final DrawerFields row;
  private final FieldReader read = new FieldReader();
  private final List<String> assumed = new ArrayList<>();
  private final @Nullable NumberExplanation number;
  private final @Nullable UsSize us;

  private InstrumentResolver(DrawerFields row) {
    this.row = row;
    this.number = read.number(row.iso());
    this.us = read.usSize(row.us());
  }

  /** The instrument a row means, or every fault in the way. */
  public static Resolution resolve(DrawerFields row) {
    return new InstrumentResolver(row).resolve();
  }

  private Resolution resolve() {
    InstrumentKind kind = kind();
    ResolvedShape shape = shape(kind);
    GritClass grit = grit(kind);
    Integer blades = blades(kind);
    Length diameter = diameter(kind);
    ShankType shank = shank();
    Length overall = overall(shank);
    Length headLength = headLength(shape, diameter, overall);
    Double maxRpm = read.number("max_rpm", row.maxRpm(), 100, 600_000, " per min");
    boolean complete =
        kind != null
            && shape != null
            && diameter != null
            && headLength != null
            && shank != null
            && overall != null;
    if (!complete || !read.faults().isEmpty()) {
      return new Resolution(null, read.faults());
    }
    return new Resolution(
        new InstrumentProperties(
            requireNonNull(kind),
            number == null ? null : number.number().encode(),
            us == null ? null : us.number(),
            requireNonNull(shape).family(),
            shape.name(),
            grit,
            blades,
            crossCut(),
            requireNonNull(diameter),
            requireNonNull(headLength),
            requireNonNull(shank),
            requireNonNull(overall),
            maxRpm == null ? null : RotationalSpeed.ofRpm(maxRpm),
            assumed),
        List.of());
  }

  private @Nullable InstrumentKind kind() {
    InstrumentKind typed = read.kind(row.kind());
    WorkingPart part = number == null ? null : number.workingPart();
    if (number != null && number.rootCanal()) {
      read.fault(
          "iso",
          row.iso(),
          "a cutting, finishing or polishing instrument; the shape is one of a"
              + " root-canal instrument");
    }
    if (typed != null && us != null && !typed.bladed()) {
      read.fault("us", row.us(), "blank, because US sizes are of burs and kind says " + typed.id());
    }
    boolean told = part != null && !part.kinds().isEmpty();
    if (typed != null) {
      if (told && !requireNonNull(part).kinds().contains(typed)) {
        read.fault(
            "kind",
            row.kind(),
            "what the number says: " + part.group() + " is " + part.inWords(),
            part.kinds().get(0).id());
      }
      return typed;
    }
    if (told) {
      InstrumentKind first = requireNonNull(part).kinds().get(0);
      if (part.kinds().size() > 1
          && first != InstrumentKind.DIAMOND
          && first != InstrumentKind.SINTERED_DIAMOND) {
        assumed.add("kind " + first.id() + " from material group " + part.group());
      }
      if (us != null && !first.bladed()) {
        read.fault("us", row.us(), "blank, because the number is of no bur: " + part.inWords());
      }
      return first;
    }
    if (!read.faulty("kind") && !read.faulty("iso")) {
      read.fault(
          "kind",
          "",
          "one of "
              + String.join(", ", InstrumentKind.ids())
              + " (neither a US size nor the short form of a number tells)");
    }
    return null;
  }

  private record ResolvedShape(ShapeFamily family, String name, InstrumentShape shape) {}

  private @Nullable ResolvedShape shape(@Nullable InstrumentKind kind) {
    InstrumentShape typed = read.shape(row.shape());
    InstrumentShape told = number == null || number.rootCanal() ? null : number.shape();
    InstrumentShape found = told != null ? told : typed;
    if (told != null && typed != null) {
      boolean sameCode = typed.code().isEmpty() || typed.code().equals(told.code());
      if (typed.family() != told.family() || !sameCode) {
        read.fault(
            "shape",
            row.shape(),
            "what the number says: " + told.code() + " " + told.name(),
            told.code());
      }
    }
    if (us != null) {
      ShapeFamily other = found == null ? null : found.family();
      if (other != null && other != us.family() && !related(other, us.family())) {
        read.fault(
            number != null && told != null ? "us" : "shape",
            number != null && told != null ? row.us() : row.shape(),
            "the same shape: US No. "
                + us.number()
                + " is "
                + us.shapeName()
                + ", not "
                + other.label());
      }
      if (found == null) {
        String code = us.isoShape();
        found = code == null ? Shapes.ofFamily(us.family()) : Shapes.byCode(code).orElseThrow();
        noteMemory(
            "shape " + us.shapeName() + " from US No. " + us.number(), us.provenance().basis());
        return new ResolvedShape(us.family(), us.shapeName(), found);
      }
    }
    if (found == null) {
      if (!read.faulty("shape") && !read.faulty("iso") && !read.faulty("us")) {
        String unknown =
            number == null
                ? ""
                : "; shape " + number.number().shape() + " of the number is unknown";
        read.fault("shape", "", "an ISO 6360 shape code or a shape name" + unknown);
      }
      return null;
    }
    if (told != null) {
      noteMemory("shape " + told.code() + " read as " + told.name(), told.provenance().basis());
    }
    return new ResolvedShape(requireNonNull(found.family()), found.name(), found);
  }

  /** Pear forms share their codes loosely between long and short. */
  private static boolean related(ShapeFamily a, ShapeFamily b) {
    return pear(a) && pear(b);
  }

  private static boolean pear(ShapeFamily family) {
    return family == ShapeFamily.PEAR || family == ShapeFamily.PEAR_ELONGATED;
  }

  private @Nullable GritClass grit(@Nullable InstrumentKind kind) {
    Characteristic told = fitting(kind);
    GritClass fromNumber = told == null ? null : told.grit();
    GritClass typed = row.grit().isEmpty() ? null : Grits.find(row.grit()).orElse(null);
    if (!row.grit().isEmpty() && kind != null && kind.bladed()) {
      read.fault("grit", row.grit(), "blank for a " + kind.label() + "; give blades instead");
      return null;
    }
    if (!row.grit().isEmpty() && typed == null) {
      read.fault(
          "grit",
          row.grit(),
          "a grit class, its ISO code or its ring colour; " + Grits.hint(row.grit()));
      return null;
    }
    if (typed != null && fromNumber != null && typed != fromNumber) {
      read.fault(
          "grit",
          row.grit(),
          "what the number says: "
              + number().number().characteristic()
              + " is "
              + fromNumber.label(),
          fromNumber.label());
    }
    if (typed == null && fromNumber != null && told != null) {
      noteMemory(
          "grit " + fromNumber.label() + " from characteristic " + told.code(),
          told.provenance().basis());
    }
    if (typed == null && fromNumber == null && kind != null && kind.isDiamond()) {
      assumed.add("grit is not known");
    }
    return typed != null ? typed : fromNumber;
  }

  private @Nullable Integer blades(@Nullable InstrumentKind kind) {
    Integer typed = read.whole("blades", row.blades(), 2, 60);
    if (kind == null) {
      return typed;
    }
    if (!kind.bladed()) {
      if (!row.blades().isEmpty()) {
        read.fault("blades", row.blades(), "blank for a " + kind.label() + ", which has no blades");
      }
      return null;
    }
    Characteristic told = fitting(kind);
    Integer usual = told == null ? null : told.usualBlades();
    Basis basis = told == null ? null : told.usualBladesBasis();
    if (typed != null) {
      if (usual != null && (usual >= 12) != (typed >= 12)) {
        assumed.add(
            "blades "
                + typed
                + " as listed, though toothing "
                + requireNonNull(told).code()
                + " usually has "
                + usual);
      }
      return typed;
    }
    if (us != null && us.bladesLow() != null) {
      Integer low = us.bladesLow();
      Integer high = us.bladesHigh();
      String range = low.equals(high) ? "" : " (usual " + low + " to " + high + ")";
      assumed.add(
          "blades "
              + low
              + range
              + ", usual for US No. "
              + us.number()
              + " ("
              + us.provenance().basis().label()
              + ")");
      return low;
    }
    if (usual != null && basis != null && told != null) {
      assumed.add(
          "blades " + usual + ", usual for toothing " + told.code() + " (" + basis.label() + ")");
      return usual;
    }
    if (!read.faulty("blades")) {
      assumed.add("number of blades is not known");
    }
    return null;
  }

  private boolean crossCut() {
    Characteristic told = number == null ? null : number.characteristic();
    return told != null && told.crossCut() || us != null && us.crossCut();
  }

  /** The characteristic of the number; one that cannot belong to this kind is a fault, once. */
  private @Nullable Characteristic fitting(@Nullable InstrumentKind kind) {
    Characteristic told = number == null || number.rootCanal() ? null : number.characteristic();
    if (told == null || kind == null || told.appliesTo().fits(kind)) {
      return told;
    }
    boolean kindFits = number().workingPart() == null;
    if (kindFits && !read.faulty("kind")) {
      read.fault(
          "kind",
          row.kind(),
          "what the number says: " + told.code() + " is for " + told.appliesTo().label());
    }
    return null;
  }

  private @Nullable Length diameter(@Nullable InstrumentKind kind) {
    Double typed = read.number("head_mm", row.headMm(), 0.1, 30, " mm");
    Double told = numberDiameterMm(kind);
    Double listed = us == null ? null : us.headDiameter().millimetres();
    if (typed != null && told != null && apart(typed, told)) {
      read.fault(
          "head_mm",
          row.headMm(),
          "what the number says: size " + number().number().size() + " is " + mm(told),
          plain(told));
    }
    if (typed != null && told == null && listed != null && apart(typed, listed)) {
      read.fault(
          "head_mm",
          row.headMm(),
          "what the US size says: No. " + us().number() + " is " + mm(listed),
          plain(listed));
    }
    if (told != null && listed != null && apart(told, listed)) {
      read.fault(
          "us",
          row.us(),
          "the same diameter: the number says "
              + mm(told)
              + ", US No. "
              + us().number()
              + " is "
              + mm(listed));
    }
    if (typed != null) {
      return Length.ofMillimetres(typed);
    }
    if (told != null) {
      return Length.ofMillimetres(told);
    }
    if (listed != null) {
      noteMemory(
          "head diameter " + mm(listed) + " from US No. " + us().number(),
          us().provenance().basis());
      return Length.ofMillimetres(listed);
    }
    if (!read.faulty("head_mm") && !read.faulty("iso") && !read.faulty("us")) {
      read.fault(
          "head_mm", "", "the largest head diameter in mm (neither number nor US size tells)");
    }
    return null;
  }

  /** Tenths of a millimetre, unless the number may be one of a root-canal instrument. */
  private @Nullable Double numberDiameterMm(@Nullable InstrumentKind kind) {
    if (number == null || number.rootCanal()) {
      return null;
    }
    boolean rotary =
        number.size().rule() == NumberSize.Rule.TENTHS
            || kind != null && kind != InstrumentKind.STEEL
            || us != null
            || !row.shape().isEmpty();
    double tenths = number.size().tenths().millimetres();
    return rotary && tenths > 0 ? tenths : null;
  }

  private @Nullable ShankType shank() {
    ShankType typed = read.shank(row.shank());
    String code = number == null ? null : number.number().shank();
    if (code == null || number == null) {
      if (typed == null && !read.faulty("shank") && !read.faulty("iso")) {
        read.fault("shank", "", "FG, RA or HP");
      }
      return typed;
    }
    Shank exact = number.shank();
    Shank known = exact != null ? exact : number.shankFamily();
    ShankType told = known == null ? null : known.type();
    if (exact != null && told == null) {
      read.fault("iso", row.iso(), "a shank of FG, RA or HP; " + code + " is " + exact.name());
      return typed;
    }
    if (typed != null && told != null && typed != told) {
      read.fault(
          "shank",
          row.shank(),
          "what the number says: " + code + " is " + requireNonNull(known).name(),
          told.name());
    }
    if (typed == null && told == null && !read.faulty("shank")) {
      read.fault("shank", "", "FG, RA or HP; shank " + code + " of the number is unknown");
    }
    return typed != null ? typed : told;
  }

  private @Nullable Length overall(@Nullable ShankType shank) {
    Double typed = read.number("overall_mm", row.overallMm(), 8, 120, " mm");
    Shank exact = number == null ? null : number.shank();
    Length told = exact == null ? null : exact.overallLength();
    boolean fromMemory = exact != null && exact.lengthBasis() == Basis.FROM_MEMORY;
    if (typed != null) {
      if (told != null
          && !fromMemory
          && Math.abs(told.millimetres() - typed) > OVERALL_TOLERANCE_MM) {
        read.fault(
            "overall_mm",
            row.overallMm(),
            "what the number says: shank "
                + requireNonNull(exact).code()
                + " is "
                + mm(told.millimetres())
                + " overall",
            plain(told.millimetres()));
      }
      return Length.ofMillimetres(typed);
    }
    if (read.faulty("overall_mm") || shank == null) {
      return null;
    }
    if (told != null && !fromMemory) {
      return told;
    }
    String code = number == null ? null : number.number().shank();
    if (code != null) {
      read.fault(
          "overall_mm",
          "",
          told == null
              ? "the overall length in mm; the catalogue does not know it for shank " + code
              : "the overall length in mm, measured; for shank "
                  + code
                  + " it is known from memory only ("
                  + mm(told.millimetres())
                  + ")");
      return null;
    }
    Length standard = requireNonNull(Shanks.standard(shank).overallLength());
    assumed.add(
        "overall length "
            + mm(standard.millimetres())
            + ", the standard length of "
            + shank
            + " instruments");
    return standard;
  }

  private @Nullable Length headLength(
      @Nullable ResolvedShape shape, @Nullable Length diameter, @Nullable Length overall) {
    Double typed = read.number("head_length_mm", row.headLengthMm(), 0.05, 60, " mm");
    Length length = typed == null ? null : Length.ofMillimetres(typed);
    if (typed == null && !read.faulty("head_length_mm") && shape != null && diameter != null) {
      Length listed = us == null ? null : us.headLength();
      if (listed != null) {
        noteMemory(
            "head length " + mm(listed.millimetres()) + " from US No. " + us().number(),
            us().provenance().basis());
        length = listed;
      } else {
        HeadLength usual = Shapes.usualHeadLength(shape.shape(), diameter);
        length = usual.length();
        assumed.add(
            "head length "
                + mm(length.millimetres())
                + ", usual for "
                + shape.name()
                + " ("
                + usual.basis().label()
                + ")");
      }
    }
    if (length != null && overall != null && length.compareTo(overall) >= 0) {
      read.fault(
          "head_length_mm",
          row.headLengthMm(),
          "less than the overall length, " + mm(overall.millimetres()));
    }
    return length;
  }

  private void noteMemory(String what, Basis basis) {
    if (basis == Basis.FROM_MEMORY) {
      assumed.add(what + " (" + basis.label() + ")");
    }
  }

  private NumberExplanation number() {
    return requireNonNull(number);
  }

  private UsSize us() {
    return requireNonNull(us);
  }

  private static boolean apart(double a, double b) {
    return Math.abs(a - b) > DIAMETER_TOLERANCE_MM;
  }

  private static String mm(double millimetres) {
    return plain(millimetres) + " mm";
  }

  private static String plain(double millimetres) {
    String text = String.format(Locale.ROOT, "%.2f", millimetres);
    return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
  }
}
