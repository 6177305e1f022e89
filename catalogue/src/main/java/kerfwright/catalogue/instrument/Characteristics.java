package kerfwright.catalogue.instrument;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Basis;

/** Characteristics by digits 10 to 12. */
public final class Characteristics {
  private static final List<Characteristic> ALL =
      Topic.read("characteristic/values.csv", Characteristics::characteristic);
  private static final Map<String, Characteristic> BY_CODE =
      ALL.stream().collect(Collectors.toMap(Characteristic::code, row -> row));

  private Characteristics() {}

  public static List<Characteristic> all() {
    return ALL;
  }

  /** The characteristic with these three digits, whatever it applies to. */
  public static Optional<Characteristic> byCode(String code) {
    return code.length() == 3 ? Optional.ofNullable(BY_CODE.get(code)) : Optional.empty();
  }

  /** What the twelfth digit says of the taper of a root-canal instrument. */
  public static Characteristic rootCanalTaper(int twelfthDigit) {
    Characteristic taper = BY_CODE.get(String.valueOf(twelfthDigit));
    if (taper == null) {
      throw new IllegalArgumentException("Twelfth digit must be 0 to 9, got " + twelfthDigit);
    }
    return taper;
  }

  private static Characteristic characteristic(DataRow row) {
    Characteristic.AppliesTo to = row.requiredOneOf("applies_to", Characteristic.AppliesTo.class);
    String code = row.required("code");
    int digits = to == Characteristic.AppliesTo.ROOT_CANAL ? 1 : 3;
    if (!code.matches("\\d{" + digits + "}")) {
      row.expected("code", digits + " digit(s)");
    }
    Integer blades = row.whole("usual_blades");
    Basis basis = row.oneOf("usual_blades_basis", Basis.class);
    if ((blades != null) != (basis != null)) {
      row.expected("usual_blades_basis", "a basis where blades are");
    }
    return new Characteristic(
        to,
        code,
        row.required("meaning"),
        row.oneOf("grit", GritClass.class),
        blades,
        basis,
        row.yes("cross_cut"),
        row.provenance());
  }
}
