package kerfwright.catalogue.evidence;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.SourceKey;

/**
 * The role of every source of published findings. A source is wholly one thing, so that no finding
 * can vouch for a constant that its own paper helped to set.
 */
public final class SourceRoles {
  private static final List<String> HEADER = List.of("source", "role", "reason");
  private static final List<String> ROLES =
      Arrays.stream(EvidenceRow.Role.values()).map(EvidenceRow.Role::id).toList();

  private final Map<SourceKey, SourceRole> bySource;

  private SourceRoles(Map<SourceKey, SourceRole> bySource) {
    this.bySource = bySource;
  }

  /** The roles packaged with the catalogue. */
  public static SourceRoles packaged() {
    return Packaged.ROLES;
  }

  static SourceRoles load(Sources sources, Faults faults) {
    Map<SourceKey, SourceRole> bySource = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("evidence/roles.csv", HEADER, faults)) {
      row.uniqueId("source", seen);
      String role = row.oneOf("role", ROLES);
      String reason = row.required("reason");
      for (SourceKey key : sources.keys(row, "source")) {
        if (row.sound()) {
          EvidenceRow.Role known = EvidenceRow.Role.values()[ROLES.indexOf(role)];
          bySource.put(key, new SourceRole(key, known, reason));
        }
      }
    }
    return new SourceRoles(bySource);
  }

  /** Every source with its role, in the order of the file. */
  public List<SourceRole> all() {
    return List.copyOf(bySource.values());
  }

  public Optional<SourceRole> of(SourceKey source) {
    return Optional.ofNullable(bySource.get(source));
  }

  /** The one role of a row's sources; a source without a role, or two roles, is a fault. */
  EvidenceRow.Role ofRow(Row row, List<SourceKey> sources) {
    Set<EvidenceRow.Role> roles = new HashSet<>();
    for (SourceKey key : sources) {
      SourceRole role = bySource.get(key);
      if (role == null) {
        row.fault("source", "'" + key.key() + "' has no role in evidence/roles.csv");
      } else {
        roles.add(role.role());
      }
    }
    if (roles.size() > 1) {
      row.fault("source", "the sources of a row must share one role, found " + roles);
    }
    return roles.stream().findFirst().orElse(EvidenceRow.Role.CONTEXT);
  }

  private static final class Packaged {
    static final SourceRoles ROLES = read();

    private static SourceRoles read() {
      Faults faults = new Faults();
      SourceRoles roles = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return roles;
    }
  }
}
