package kerfwright.catalogue.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.quantity.Identified;

/**
 * How a published test is set up for the models.
 *
 * @param id id that cases name
 * @param label in a few words
 * @param tool what cuts
 * @param work id of the material cut, empty where nothing is cut
 * @param cover id of the outermost layer of the tooth, empty where there is none
 * @param handpiece id of the handpiece, empty where the speed is told under load
 * @param conditions every condition, its own and those of the set-up it resembles
 */
public record SetUp(
    String id,
    String label,
    Tool tool,
    String work,
    String cover,
    String handpiece,
    Map<ConditionKind, Condition> conditions) {
  public SetUp {
    conditions = Map.copyOf(conditions);
  }

  /** What cuts in a test. */
  public enum Tool implements Identified {
    DIAMOND,
    CARBIDE,
    NONE
  }

  public Optional<Condition> find(ConditionKind kind) {
    return Optional.ofNullable(conditions.get(kind));
  }

  /** A condition known to be there; a missing one is a fault of the data. */
  public Condition get(ConditionKind kind) {
    return find(kind)
        .orElseThrow(
            () -> new IllegalArgumentException("Set-up '" + id + "' lacks condition " + kind.id()));
  }

  /** Conditions in the order of their kinds. */
  public List<Condition> ordered() {
    return conditions.isEmpty() ? List.of() : List.copyOf(new EnumMap<>(conditions).values());
  }
}
