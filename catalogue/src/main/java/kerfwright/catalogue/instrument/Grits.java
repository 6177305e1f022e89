package kerfwright.catalogue.instrument;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Length;

/** Grit classes by ISO code, class name and ring colour. */
public final class Grits {
  private static final List<GritEntry> ALL = Topic.read("grit/values.csv", Grits::read);

  private Grits() {}

  public static List<GritEntry> all() {
    return ALL;
  }

  /** By digits 10 to 12 of the number. */
  public static Optional<GritClass> byCode(String code) {
    return first(entry -> entry.grit().isoCode().equals(code.strip()));
  }

  /** By class name; hyphens and spaces count the same. */
  public static Optional<GritClass> byLabel(String label) {
    return first(entry -> entry.grit().id().equals(folded(label)));
  }

  /** By ring colour of a diamond instrument; "none" is the medium class. */
  public static Optional<GritClass> byRing(String colour) {
    return first(entry -> entry.rings().contains(folded(colour)));
  }

  /** By code, class name or ring colour. */
  public static Optional<GritClass> find(String text) {
    return byCode(text).or(() -> byLabel(text)).or(() -> byRing(text));
  }

  public static GritEntry entry(GritClass grit) {
    return all().stream().filter(entry -> entry.grit() == grit).findFirst().orElseThrow();
  }

  private static Optional<GritClass> first(java.util.function.Predicate<GritEntry> fits) {
    return all().stream().filter(fits).map(GritEntry::grit).findFirst();
  }

  private static String folded(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
  }

  private static GritEntry read(DataRow row) {
    GritClass grit = row.requiredOneOf("class", GritClass.class);
    if (!grit.isoCode().equals(row.group("iso_code"))) {
      row.expected("iso_code", grit.isoCode() + " for " + grit.label());
    }
    Double low = row.positive("low_um");
    Double high = row.positive("high_um");
    if ((low == null) != (high == null) || low != null && high != null && low > high) {
      row.expected("high_um", "both ends, low not above high, or neither");
    }
    return new GritEntry(
        grit,
        List.of(row.required("rings").split(" +")),
        low == null ? null : Length.ofMicrometres(low),
        high == null ? null : Length.ofMicrometres(high),
        row.text("single_values_um"),
        row.text("usual_use"),
        row.provenance());
  }
}
