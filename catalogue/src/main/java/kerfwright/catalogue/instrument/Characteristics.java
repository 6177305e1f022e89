package kerfwright.catalogue.instrument;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.DataFault;
import kerfwright.quantity.Basis;

/** Characteristics by digits 10 to 12. */
public final class Characteristics {
  private static final Topic<Characteristic> TOPIC =
      Topic.read(
          "characteristic",
          List.of(
              "applies_to",
              "code",
              "meaning",
              "grit",
              "usual_blades",
              "usual_blades_basis",
              "cross_cut"),
          Characteristics::characteristic);
  private static final Map<String, Characteristic> BY_CODE = new HashMap<>();

  static {
    TOPIC.readable().forEach(row -> BY_CODE.put(row.code(), row));
  }

  private Characteristics() {}

  public static List<Characteristic> all() {
    return TOPIC.rows();
  }

  /** The characteristic with these three digits, whatever it applies to. */
  public static Optional<Characteristic> byCode(String code) {
    all();
    return code.length() == 3 ? Optional.ofNullable(BY_CODE.get(code)) : Optional.empty();
  }

  /** What the twelfth digit says of the taper of a root-canal instrument. */
  public static Characteristic rootCanalTaper(int twelfthDigit) {
    all();
    Characteristic taper = BY_CODE.get(String.valueOf(twelfthDigit));
    if (taper == null) {
      throw new IllegalArgumentException("Twelfth digit must be 0 to 9, got " + twelfthDigit);
    }
    return taper;
  }

  public static List<DataFault> dataFaults() {
    return TOPIC.faults();
  }

  private static Characteristic characteristic(DataRow row) {
    Characteristic.AppliesTo to =
        row.requiredOneOf(
            "applies_to", Characteristic.AppliesTo.values(), Characteristic.AppliesTo::id);
    String code = row.required("code");
    int digits = to == Characteristic.AppliesTo.ROOT_CANAL ? 1 : 3;
    if (!code.matches("\\d{" + digits + "}")) {
      row.expected("code", digits + " digit(s)");
    }
    var blades = row.whole("usual_blades");
    Basis basis = row.basis("usual_blades_basis");
    if (blades.isPresent() != (basis != null)) {
      row.expected("usual_blades_basis", "a basis where blades are");
    }
    return new Characteristic(
        to,
        code,
        row.required("meaning"),
        row.oneOf("grit", GritClass.values(), GritClass::id),
        blades.isPresent() ? blades.getAsInt() : null,
        basis,
        row.yes("cross_cut"),
        row.provenance());
  }
}
