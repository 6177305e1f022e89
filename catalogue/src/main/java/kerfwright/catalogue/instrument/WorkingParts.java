package kerfwright.catalogue.instrument;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import org.jspecify.annotations.Nullable;

/**
 * Materials of the working part by digits 1 to 3: whole groups where they were met, else the first
 * two digits and the third (coating or bond) looked up apart.
 */
public final class WorkingParts {
  private record Entry(
      String role,
      String code,
      String meaning,
      @Nullable InstrumentKind kind,
      Provenance provenance) {}

  private static final List<Entry> ALL = Topic.read("working-part/values.csv", WorkingParts::entry);
  private static final Map<String, Entry> BY_ROLE_AND_CODE =
      ALL.stream().collect(Collectors.toMap(entry -> entry.role + entry.code, entry -> entry));

  private WorkingParts() {}

  /** What the group says; nothing where neither the whole nor its first two digits are known. */
  public static Optional<WorkingPart> byGroup(String group) {
    Entry whole = BY_ROLE_AND_CODE.get("group" + group);
    Entry firstTwo = BY_ROLE_AND_CODE.get("first-two-digits" + group.substring(0, 2));
    if (firstTwo == null) {
      return Optional.empty();
    }
    boolean abrasive = group.charAt(0) == '6' || group.charAt(0) == '8';
    Entry third = BY_ROLE_AND_CODE.get((abrasive ? "bond" : "coating") + group.charAt(2));
    return Optional.of(
        new WorkingPart(
            group,
            whole != null && !abrasive && group.charAt(2) == '0' ? whole.meaning : firstTwo.meaning,
            third == null ? null : (abrasive ? "bond: " : "coating: ") + third.meaning,
            kinds(group, third != null),
            whole != null,
            whole != null ? whole.provenance : weaker(firstTwo, third)));
  }

  /** Groups met as a whole whose usual kind is the given one, e.g. 500 for carbide. */
  public static List<String> groupsOf(InstrumentKind kind) {
    return ALL.stream()
        .filter(entry -> entry.kind == kind)
        .map(Entry::code)
        .sorted(Comparator.naturalOrder())
        .toList();
  }

  /**
   * A galvanic or sintered bond makes a diamond instrument, a soft bond (rubber, plastic, silicone)
   * a polisher, other bonds of other grains a stone; a disc may carry any of them (common
   * practice).
   */
  private static List<InstrumentKind> kinds(String group, boolean thirdKnown) {
    List<InstrumentKind> kinds = new ArrayList<>();
    char bond = group.charAt(2);
    boolean soft = bond == '2' || bond == '3' || bond == '8';
    switch (group.charAt(0)) {
      case '3' -> kinds.add(InstrumentKind.STEEL);
      case '5' -> kinds.add(InstrumentKind.CARBIDE);
      case '8' -> {
        kinds.add(
            bond == '7'
                ? InstrumentKind.SINTERED_DIAMOND
                : soft ? InstrumentKind.POLISHER : InstrumentKind.DIAMOND);
        if (bond != '6' && bond != '7') {
          kinds.add(soft ? InstrumentKind.DIAMOND : InstrumentKind.POLISHER);
        }
        kinds.add(InstrumentKind.DISC);
      }
      default -> {
        kinds.add(soft ? InstrumentKind.POLISHER : InstrumentKind.STONE);
        kinds.add(soft ? InstrumentKind.STONE : InstrumentKind.POLISHER);
        kinds.add(InstrumentKind.DISC);
      }
    }
    return thirdKnown || group.charAt(0) == '3' || group.charAt(0) == '5' ? kinds : List.of();
  }

  private static Provenance weaker(Entry firstTwo, @Nullable Entry third) {
    if (third == null
        || firstTwo.provenance.basis() == kerfwright.quantity.Basis.FROM_MEMORY
        || firstTwo.provenance.confidence().compareTo(third.provenance.confidence()) > 0) {
      return firstTwo.provenance;
    }
    return third.provenance.with(kerfwright.quantity.Basis.DERIVED);
  }

  private static Entry entry(DataRow row) {
    String role = row.required("role");
    String code = row.required("code");
    int digits =
        switch (role) {
          case "group" -> 3;
          case "first-two-digits" -> 2;
          case "coating", "bond", "soft" -> 1;
          default -> 0;
        };
    if (digits == 0) {
      row.expected("role", "group, first-two-digits, coating, bond or soft");
    } else if (!code.matches("\\d{" + digits + "}")) {
      row.expected("code", digits + " digit(s)");
    }
    InstrumentKind kind = row.oneOf("kind", InstrumentKind.class);
    return new Entry(role, code, row.required("meaning"), kind, row.provenance());
  }
}
