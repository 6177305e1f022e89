package kerfwright.catalogue.evidence;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Row;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * The role of every source of published findings. A source is wholly one thing, so that no finding
 * can vouch for a constant that its own paper helped to set.
 */
public final class SourceRoles {
  private static final SourceRoles PACKAGED =
      Topic.sound(
          faults -> {
            Map<SourceKey, SourceRole> bySource = new LinkedHashMap<>();
            Topic.read("evidence/roles.csv", faults, SourceRoles::role)
                .forEach(
                    role -> {
                      if (bySource.put(role.source(), role) != null) {
                        faults.add("evidence/roles.csv", 0, "source", "twice " + role.source());
                      }
                    });
            return new SourceRoles(bySource);
          });

  private final Map<SourceKey, SourceRole> bySource;

  private SourceRoles(Map<SourceKey, SourceRole> bySource) {
    this.bySource = bySource;
  }

  /** The roles packaged with the catalogue. */
  public static SourceRoles packaged() {
    return PACKAGED;
  }

  private static @Nullable SourceRole role(DataRow row) {
    EvidenceRow.Role role = row.requiredOneOf("role", EvidenceRow.Role.class);
    String reason = row.required("reason");
    List<SourceKey> keys = row.sources();
    return keys.isEmpty() ? null : new SourceRole(keys.get(0), role, reason);
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
}
