package kerfwright.catalogue.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.instrument.Characteristic;
import kerfwright.catalogue.instrument.Characteristics;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.Shank;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingPart;
import kerfwright.catalogue.instrument.WorkingParts;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * What a number says, group by group, each with its standing; unknown groups stay as written and
 * are called unknown.
 *
 * <p><b>Root-canal instruments.</b> A number is recognised as one only by a shape group the
 * catalogue lists as a root-canal shape, or because the caller knows it from elsewhere. Diamond,
 * carbide and other abrasive working parts, and shapes listed for rotary instruments, mark the
 * number as not one. A number with a steel or unknown material (or a short form) and an unlisted
 * shape may be either: then the size is left undecided and both readings are shown. The taper rule
 * of the twelfth digit is from GOST R ISO 6360-5; the hundredths rule is from memory.
 *
 * @param number the number
 * @param groups its groups in order
 * @param workingPart material, where known
 * @param shank shank, where its code is known
 * @param shankFamily type of shank by its first digit, where the code is unknown
 * @param shape shape, where known
 * @param characteristic characteristic, where known and fitting the material
 * @param size size with the rule that holds
 */
public record NumberExplanation(
    IsoNumber number,
    List<NumberGroup> groups,
    @Nullable WorkingPart workingPart,
    @Nullable Shank shank,
    @Nullable Shank shankFamily,
    @Nullable InstrumentShape shape,
    @Nullable Characteristic characteristic,
    NumberSize size) {
  private static final Provenance TENTHS =
      standing("standards-s22", "text of the page", Basis.SEEN, Confidence.HIGH);
  private static final Provenance HUNDREDTHS =
      standing("standards-memory", "recalled", Basis.FROM_MEMORY, Confidence.MEDIUM);
  private static final Provenance EXTENSION =
      standing("standards-s04", "abstract", Basis.SEEN, Confidence.HIGH);

  public NumberExplanation {
    groups = List.copyOf(groups);
  }

  /** True where the number is one of a root-canal instrument. */
  public boolean rootCanal() {
    return size.rule() == NumberSize.Rule.HUNDREDTHS;
  }

  static NumberExplanation of(IsoNumber number) {
    String material = number.material();
    String shankCode = number.shank();
    WorkingPart part = material == null ? null : WorkingParts.byGroup(material).orElse(null);
    Shank shank = shankCode == null ? null : Shanks.byCode(shankCode).orElse(null);
    Shank family =
        shankCode == null || shank != null ? null : Shanks.familyOf(shankCode).orElse(null);
    InstrumentShape shape = Shapes.byCode(number.shape()).orElse(null);
    NumberSize size =
        NumberSize.of(number.groupValue(number.shortForm() ? 2 : 4), rule(part, shape));
    boolean rootCanal = size.rule() == NumberSize.Rule.HUNDREDTHS;
    Characteristic characteristic =
        rootCanal
            ? Characteristics.rootCanalTaper(number.characteristic().charAt(2) - '0')
            : Characteristics.byCode(number.characteristic())
                .filter(each -> fits(each, part))
                .orElse(null);

    List<NumberGroup> groups = new ArrayList<>();
    if (material != null) {
      groups.add(materialGroup(material, part));
    }
    if (shankCode != null) {
      groups.add(shankGroup(shankCode, shank, family));
    }
    groups.add(
        shape == null
            ? NumberGroup.unknown(NumberGroup.Role.SHAPE, number.shape(), " shape")
            : NumberGroup.known(
                NumberGroup.Role.SHAPE, number.shape(), shape.name(), shape.provenance()));
    groups.add(characteristicGroup(number.characteristic(), characteristic, part));
    groups.add(sizeGroup(number.size(), size));
    String extension = number.extension();
    if (extension != null) {
      groups.add(
          NumberGroup.known(
              NumberGroup.Role.EXTENSION,
              extension,
              "optional group of diamond instruments; its meaning is not interpreted",
              EXTENSION));
    }
    return new NumberExplanation(number, groups, part, shank, family, shape, characteristic, size);
  }

  private static NumberSize.Rule rule(@Nullable WorkingPart part, @Nullable InstrumentShape shape) {
    boolean steelOrOpen =
        part == null || part.kinds().isEmpty() || part.kinds().contains(InstrumentKind.STEEL);
    if (!steelOrOpen) {
      return NumberSize.Rule.TENTHS;
    }
    if (shape == null) {
      return NumberSize.Rule.UNDECIDED;
    }
    return shape.rootCanal() ? NumberSize.Rule.HUNDREDTHS : NumberSize.Rule.TENTHS;
  }

  private static boolean fits(Characteristic characteristic, @Nullable WorkingPart part) {
    if (characteristic.appliesTo() == Characteristic.AppliesTo.ROOT_CANAL) {
      return false;
    }
    return part == null
        || part.kinds().isEmpty()
        || part.kinds().stream().anyMatch(kind -> characteristic.appliesTo().fits(kind));
  }

  private static NumberGroup materialGroup(String digits, @Nullable WorkingPart part) {
    if (part == null) {
      return NumberGroup.unknown(NumberGroup.Role.MATERIAL, digits, " material");
    }
    return new NumberGroup(
        NumberGroup.Role.MATERIAL, digits, part.third() != null, part.inWords(), part.provenance());
  }

  private static NumberGroup shankGroup(
      String digits, @Nullable Shank shank, @Nullable Shank family) {
    if (shank != null) {
      var length = shank.overallLength();
      var basis = shank.lengthBasis();
      String size =
          length == null || basis == null
              ? "; overall length not known"
              : String.format(
                  Locale.ROOT,
                  "; overall length %.1f mm (%s)",
                  length.millimetres(),
                  basis.label());
      String diameter =
          shank.type() == null
              ? ""
              : String.format(
                  Locale.ROOT, ", diameter %.2f mm", shank.type().diameter().millimetres());
      return NumberGroup.known(
          NumberGroup.Role.SHANK, digits, shank.name() + diameter + size, shank.provenance());
    }
    String what =
        family == null ? " shank" : " code of the " + family.name() + "; length not known";
    return NumberGroup.unknown(NumberGroup.Role.SHANK, digits, what);
  }

  private static NumberGroup characteristicGroup(
      String digits, @Nullable Characteristic characteristic, @Nullable WorkingPart part) {
    if (characteristic != null) {
      return NumberGroup.known(
          NumberGroup.Role.CHARACTERISTIC,
          digits,
          characteristic.meaning(),
          characteristic.provenance());
    }
    Optional<Characteristic> other = Characteristics.byCode(digits);
    String what =
        other.isPresent() && part != null
            ? " for this material; listed for " + other.get().appliesTo().label() + " only"
            : " characteristic";
    return NumberGroup.unknown(NumberGroup.Role.CHARACTERISTIC, digits, what);
  }

  private static NumberGroup sizeGroup(String digits, NumberSize size) {
    double tenths = size.tenths().millimetres();
    double hundredths = size.hundredths().millimetres();
    return switch (size.rule()) {
      case TENTHS ->
          digits.equals("000")
              ? NumberGroup.unknown(NumberGroup.Role.SIZE, digits, " size")
              : NumberGroup.known(
                  NumberGroup.Role.SIZE,
                  digits,
                  String.format(Locale.ROOT, "largest head diameter %.1f mm", tenths)
                      + (NominalSizes.byCode(digits).isPresent()
                          ? ""
                          : "; not among the nominal sizes of the catalogue"),
                  TENTHS);
      case HUNDREDTHS ->
          NumberGroup.known(
              NumberGroup.Role.SIZE,
              digits,
              String.format(Locale.ROOT, "root-canal size %.2f mm", hundredths),
              HUNDREDTHS);
      case UNDECIDED ->
          NumberGroup.unknown(
              NumberGroup.Role.SIZE,
              digits,
              String.format(
                  Locale.ROOT,
                  ": %.1f mm if a rotary instrument, %.2f mm if a root-canal instrument; the number"
                      + " does not tell which",
                  tenths,
                  hundredths));
    };
  }

  private static Provenance standing(
      String source, String locator, Basis basis, Confidence confidence) {
    return new Provenance(List.of(new SourceKey(source)), locator, basis, confidence, "");
  }
}
