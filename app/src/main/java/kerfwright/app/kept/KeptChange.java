package kerfwright.app.kept;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import kerfwright.app.chairside.QueryFields;
import kerfwright.practice.kept.KeptCase;

/**
 * What one version of a case changed.
 *
 * @param version its number
 * @param at when it was kept
 * @param fields keys of the names of what was changed; empty for the first version, and where the
 *     same case was planned for the first time
 */
public record KeptChange(int version, Instant at, List<String> fields) {
  /** The beginning of a field's name in the form, and the key of what the form calls it. */
  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("pulp", "case.pulp"),
          Map.entry("tooth", "case.tooth"),
          Map.entry("restoration", "case.restoration"),
          Map.entry("intended", "case.intended"),
          Map.entry("lesion", "case.lesion"),
          Map.entry("layer", "case.field-layers"),
          Map.entry("keep", "case.keep"),
          Map.entry("outline", "case.outline"),
          Map.entry("chamber", "case.field-chamber"),
          Map.entry("handpieces", "case.handpieces"),
          Map.entry("coolant", "case.water"),
          Map.entry("finish", "case.finish"));

  /** The changes of a case, newest first as the versions are. */
  static List<KeptChange> of(List<KeptCase> versions) {
    List<KeptChange> all = new ArrayList<>();
    for (int i = 0; i < versions.size(); i++) {
      KeptCase now = versions.get(i);
      List<String> fields =
          i + 1 < versions.size() ? changed(versions.get(i + 1).form(), now.form()) : List.of();
      all.add(new KeptChange(now.version(), now.at(), fields));
    }
    return all;
  }

  private static List<String> changed(String before, String now) {
    Map<String, List<String>> old = QueryFields.of(before);
    Map<String, List<String>> fresh = QueryFields.of(now);
    TreeSet<String> names = new TreeSet<>(old.keySet());
    names.addAll(fresh.keySet());
    TreeSet<String> found = new TreeSet<>();
    for (String name : names) {
      if (!said(old, name).equals(said(fresh, name))) {
        NAMES.forEach(
            (start, key) -> {
              if (name.startsWith(start)) {
                found.add(key);
              }
            });
      }
    }
    return List.copyOf(found);
  }

  /** A blank field says what a missing one says. */
  private static List<String> said(Map<String, List<String>> fields, String name) {
    return fields.getOrDefault(name, List.of()).stream().filter(one -> !one.isBlank()).toList();
  }
}
