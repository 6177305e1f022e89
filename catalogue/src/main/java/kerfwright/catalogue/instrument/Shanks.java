package kerfwright.catalogue.instrument;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;

/** Shanks by the code of the number, and the usual overall length of each type. */
public final class Shanks {
  private static final List<Shank> ALL = Topic.read("shank/values.csv", Shanks::shank);
  private static final Map<String, Shank> BY_CODE =
      ALL.stream().collect(Collectors.toMap(Shank::code, shank -> shank));

  private Shanks() {}

  public static List<Shank> all() {
    return ALL;
  }

  /** The shank with exactly these three digits, if the catalogue has it. */
  public static Optional<Shank> byCode(String code) {
    return code.length() == 3 ? Optional.ofNullable(BY_CODE.get(code)) : Optional.empty();
  }

  /** What the first digit alone tells of an unknown code: the type, never the length. */
  public static Optional<Shank> familyOf(String code) {
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

  private static Shank shank(DataRow row) {
    boolean family = row.required("role").equals("family");
    String code = family ? row.required("code") : row.group("code");
    ShankType type = row.oneOf("type", ShankType.class);
    Length length = row.millimetres("overall_length_mm");
    Basis lengthBasis = row.oneOf("length_basis", Basis.class);
    if ((length != null) != (lengthBasis != null)) {
      row.expected("length_basis", "a basis just where a length is");
    }
    if (family && type == null) {
      row.expected("type", "FG, RA or HP for a family");
    }
    return new Shank(
        code,
        row.required("name"),
        type,
        row.millimetres("diameter_mm"),
        length,
        lengthBasis,
        row.provenance());
  }
}
