package kerfwright.practice.setting;

import java.util.Map;
import java.util.Optional;

/**
 * The settings as they stand. Features read their own from here; a name nobody set has no value,
 * and the feature's default counts.
 *
 * @param version grows by one with every change
 * @param values by name, such as {@code language} or {@code reprocessing.cleaning-min}
 */
public record SettingValues(int version, Map<String, String> values) {
  public SettingValues {
    values = Map.copyOf(values);
  }

  /** Nothing set yet. */
  public static SettingValues none() {
    return new SettingValues(0, Map.of());
  }

  public Optional<String> find(String name) {
    return Optional.ofNullable(values.get(name));
  }

  public String text(String name, String otherwise) {
    return values.getOrDefault(name, otherwise);
  }

  /** A whole number; the default where it is none. */
  public int whole(String name, int otherwise) {
    return find(name)
        .filter(text -> text.matches("-?\\d{1,9}"))
        .map(Integer::valueOf)
        .orElse(otherwise);
  }
}
