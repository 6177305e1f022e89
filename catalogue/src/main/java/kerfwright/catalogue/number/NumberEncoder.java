package kerfwright.catalogue.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.instrument.Characteristic;
import kerfwright.catalogue.instrument.Characteristics;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.NominalSize;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.Shank;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingParts;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;

/**
 * Finds the ISO 6360 numbers that may stand for an instrument known by its properties.
 *
 * <p>Each group is looked up backwards: material by kind, shank by type and overall length (within
 * 1 mm), shape by name or else by family, characteristic by grit or by blades, size as the nominal
 * size nearest to the diameter. Where a group has several answers there are several numbers; where
 * it has none there is no number, for a number with a guessed group would name another instrument.
 */
public final class NumberEncoder {
  private static final double LENGTH_TOLERANCE_MM = 1.0;

  private NumberEncoder() {}

  /** Numbers that fit, the surest first. */
  public static List<IsoCandidate> candidates(InstrumentProperties instrument) {
    String known = instrument.iso();
    if (known != null && !IsoNumber.parse(known).shortForm()) {
      return List.of(
          new IsoCandidate(
              IsoNumber.parse(known), Basis.DERIVED, Confidence.HIGH, "its own number"));
    }
    List<String> materials = materials(instrument.kind());
    NominalSize size = NominalSizes.nearest(instrument.headDiameter());
    List<IsoCandidate> found = new ArrayList<>();
    for (Shank shank : shanks(instrument)) {
      for (InstrumentShape shape : shapes(instrument)) {
        for (Characteristic characteristic : characteristics(instrument)) {
          for (String material : materials) {
            found.add(candidate(material, shank, shape, characteristic, size, instrument));
          }
        }
      }
    }
    found.sort((a, b) -> a.confidence().compareTo(b.confidence()));
    return List.copyOf(found);
  }

  private static IsoCandidate candidate(
      String material,
      Shank shank,
      InstrumentShape shape,
      Characteristic characteristic,
      NominalSize size,
      InstrumentProperties instrument) {
    List<Provenance> parts =
        List.of(
            WorkingParts.byGroup(material).orElseThrow().provenance(),
            shank.provenance(),
            shape.provenance(),
            characteristic.provenance());
    boolean memory = parts.stream().anyMatch(part -> part.basis() == Basis.FROM_MEMORY);
    Confidence confidence =
        parts.stream().map(Provenance::confidence).reduce(Confidence.HIGH, Confidence::and);
    String rounding =
        apartMm(size.diameter(), instrument.headDiameter()) > 1e-6
            ? String.format(
                Locale.ROOT,
                "; size %s is the nearest to %.2f mm",
                size.code(),
                instrument.headDiameter().millimetres())
            : "";
    return new IsoCandidate(
        IsoNumber.of(material, shank.code(), shape.code(), characteristic.code(), size.code()),
        memory ? Basis.FROM_MEMORY : Basis.DERIVED,
        confidence,
        shape.name() + "; " + characteristic.meaning() + rounding);
  }

  /** Whole groups met for the kind; 806 and 807 for diamonds, 500 for carbide, both steels. */
  private static List<String> materials(InstrumentKind kind) {
    List<String> groups = WorkingParts.groupsOf(kind);
    return switch (kind) {
      case DIAMOND -> List.of("806");
      case CARBIDE -> List.of("500");
      default -> groups;
    };
  }

  private static List<Shank> shanks(InstrumentProperties instrument) {
    return Shanks.all().stream()
        .filter(shank -> !shank.familyOnly() && shank.type() == instrument.shank())
        .filter(
            shank -> {
              Length length = shank.overallLength();
              return length != null
                  && apartMm(length, instrument.overallLength()) <= LENGTH_TOLERANCE_MM;
            })
        .toList();
  }

  private static List<InstrumentShape> shapes(InstrumentProperties instrument) {
    List<InstrumentShape> named =
        Shapes.all().stream().filter(shape -> shape.name().equals(instrument.shapeName())).toList();
    return named.isEmpty()
        ? Shapes.all().stream().filter(shape -> shape.family() == instrument.shape()).toList()
        : named;
  }

  private static List<Characteristic> characteristics(InstrumentProperties instrument) {
    GritClass grit = instrument.grit();
    Integer blades = instrument.blades();
    return Characteristics.all().stream()
        .filter(each -> each.appliesTo().fits(instrument.kind()))
        .filter(
            each -> {
              if (!instrument.kind().bladed()) {
                return grit != null && each.grit() == grit;
              }
              Integer usual = each.usualBlades();
              return blades != null
                  && usual != null
                  && each.crossCut() == instrument.crossCut()
                  && usual.equals(blades);
            })
        .toList();
  }

  private static double apartMm(Length a, Length b) {
    return Math.abs(a.millimetres() - b.millimetres());
  }
}
