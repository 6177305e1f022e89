package kerfwright.catalogue.instrument;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;

/** Nominal sizes by code and by diameter. */
public final class NominalSizes {
  private static final List<NominalSize> ALL =
      Topic.read("nominal-size/values.csv", NominalSizes::row);

  private NominalSizes() {}

  public static List<NominalSize> all() {
    return ALL;
  }

  public static Optional<NominalSize> byCode(String code) {
    return all().stream().filter(size -> size.code().equals(code)).findFirst();
  }

  /** The size nearest to a diameter; of two equally near a listed one, then the smaller. */
  public static NominalSize nearest(Length diameter) {
    return all().stream()
        .min(
            Comparator.comparingLong((NominalSize size) -> nanometresApart(size, diameter))
                .thenComparing(size -> !size.listed()))
        .orElseThrow();
  }

  /** Rounded, so that a tie in decimals stays a tie in binary. */
  private static long nanometresApart(NominalSize size, Length diameter) {
    return Math.round(Math.abs(size.diameter().metres() - diameter.metres()) * 1e9);
  }

  private static NominalSize row(DataRow row) {
    String code = row.group("code");
    double millimetres = row.requiredPositive("diameter_mm");
    if (code.matches("\\d{3}") && Math.abs(Integer.parseInt(code) / 10.0 - millimetres) > 1e-9) {
      row.expected("diameter_mm", "the code in tenths of a millimetre");
    }
    if (!row.text("listed").matches("yes|unsure")) {
      row.expected("listed", "yes or unsure");
    }
    Basis listedBasis = row.oneOf("listed_basis", Basis.class);
    return new NominalSize(
        code,
        Length.ofMillimetres(millimetres),
        row.text("listed").equals("yes"),
        listedBasis == null ? Basis.FROM_MEMORY : listedBasis,
        row.provenance());
  }
}
