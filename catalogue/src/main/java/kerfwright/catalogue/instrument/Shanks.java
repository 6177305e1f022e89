package kerfwright.catalogue.instrument;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.DataFault;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;

/** Shanks by the code of the number, and the usual overall length of each type. */
public final class Shanks {
  private static final Topic<Shank> TOPIC =
      Topic.read(
          "shank",
          List.of(
              "role", "code", "name", "type", "diameter_mm", "overall_length_mm", "length_basis"),
          Shanks::shank);
  private static final Map<String, Shank> BY_CODE = new HashMap<>();

  static {
    TOPIC.readable().forEach(shank -> BY_CODE.put(shank.code(), shank));
  }

  private Shanks() {}

  public static List<Shank> all() {
    return TOPIC.rows();
  }

  /** The shank with exactly these three digits, if the catalogue has it. */
  public static Optional<Shank> byCode(String code) {
    all();
    return code.length() == 3 ? Optional.ofNullable(BY_CODE.get(code)) : Optional.empty();
  }

  /** What the first digit alone tells of an unknown code: the type, never the length. */
  public static Optional<Shank> familyOf(String code) {
    all();
    return code.length() == 3
        ? Optional.ofNullable(BY_CODE.get(code.substring(0, 1)))
        : Optional.empty();
  }

  /** The shank of standard length of a type: codes 314, 204 and 104. */
  public static Shank standard(ShankType type) {
    String code =
        switch (type) {
          case FG -> "314";
          case RA -> "204";
          case HP -> "104";
        };
    return byCode(code).orElseThrow();
  }

  public static List<DataFault> dataFaults() {
    return TOPIC.faults();
  }

  private static Shank shank(DataRow row) {
    boolean family = row.required("role").equals("family");
    String code = family ? row.required("code") : row.group("code");
    ShankType type = row.oneOf("type", ShankType.values(), ShankType::name);
    var diameter = row.number("diameter_mm");
    var length = row.number("overall_length_mm");
    Basis lengthBasis = row.basis("length_basis");
    if (length.isPresent() != (lengthBasis != null)) {
      row.expected("length_basis", "a basis just where a length is");
    }
    if (family && type == null) {
      row.expected("type", "FG, RA or HP for a family");
    }
    return new Shank(
        code,
        row.required("name"),
        type,
        diameter.isPresent() ? Length.ofMillimetres(diameter.getAsDouble()) : null,
        length.isPresent() ? Length.ofMillimetres(length.getAsDouble()) : null,
        lengthBasis,
        row.provenance());
  }
}
