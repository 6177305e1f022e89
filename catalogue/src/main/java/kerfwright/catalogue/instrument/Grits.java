package kerfwright.catalogue.instrument;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.DataFault;
import kerfwright.quantity.Length;

/** Grit classes by ISO code, class name and ring colour. */
public final class Grits {
  private static final Topic<GritEntry> TOPIC =
      Topic.read(
          "grit",
          List.of(
              "iso_code", "class", "rings", "low_um", "high_um", "single_values_um", "usual_use"),
          Grits::entry);

  private Grits() {}

  public static List<GritEntry> all() {
    return TOPIC.rows();
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

  public static List<DataFault> dataFaults() {
    return TOPIC.faults();
  }

  private static Optional<GritClass> first(java.util.function.Predicate<GritEntry> fits) {
    return all().stream().filter(fits).map(GritEntry::grit).findFirst();
  }

  private static String folded(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
  }

  private static GritEntry entry(DataRow row) {
    GritClass grit = row.requiredOneOf("class", GritClass.values(), GritClass::id);
    if (!grit.isoCode().equals(row.group("iso_code"))) {
      row.expected("iso_code", grit.isoCode() + " for " + grit.label());
    }
    var low = row.number("low_um");
    var high = row.number("high_um");
    if (low.isPresent() != high.isPresent()
        || low.isPresent() && low.getAsDouble() > high.getAsDouble()) {
      row.expected("high_um", "both ends, low not above high, or neither");
    }
    return new GritEntry(
        grit,
        List.of(row.required("rings").split(" +")),
        low.isPresent() ? Length.ofMicrometres(low.getAsDouble()) : null,
        high.isPresent() ? Length.ofMicrometres(high.getAsDouble()) : null,
        row.text("single_values_um"),
        row.text("usual_use"),
        row.provenance());
  }
}
