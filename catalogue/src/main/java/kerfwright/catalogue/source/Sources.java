package kerfwright.catalogue.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;

/**
 * The register of sources: every key used in a table stands here. A work that both files need may
 * stand in both; the entry of the literature file is then the one shown.
 */
public final class Sources {
  private static final List<String> FILES =
      List.of("source/literature.csv", "source/standards.csv");

  private final Map<SourceKey, Source> byKey;

  private Sources(Map<SourceKey, Source> byKey) {
    this.byKey = byKey;
  }

  /** The register packaged with the catalogue. */
  public static Sources packaged() {
    return Packaged.REGISTER;
  }

  /** Reads the register; a file of the list that is not packaged is passed over. */
  public static Sources load(Faults faults) {
    Map<SourceKey, Source> byKey = new TreeMap<>();
    for (String file : FILES) {
      if (Table.exists(file)) {
        Set<String> seen = new HashSet<>();
        Table.read(file, faults).forEach(row -> put(row, seen, byKey));
      }
    }
    return new Sources(byKey);
  }

  private static void put(Row row, Set<String> seen, Map<SourceKey, Source> byKey) {
    String key = row.uniqueId("key", seen);
    row.required("title");
    if (!key.matches("[a-z0-9][a-z0-9.-]*")) {
      row.fault("key", "'" + key + "' must be lower-case letters, digits, dots and hyphens");
    }
    if (row.sound()) {
      SourceKey sourceKey = new SourceKey(key);
      byKey.putIfAbsent(
          sourceKey,
          new Source(
              sourceKey,
              row.text("authors"),
              row.text("title"),
              row.text("year"),
              row.text("where"),
              row.text("doi"),
              row.text("seen")));
    }
  }

  public Optional<Source> find(SourceKey key) {
    return Optional.ofNullable(byKey.get(key));
  }

  /** All entries, by key. */
  public Collection<Source> all() {
    return List.copyOf(byKey.values());
  }

  /** The keys of a cell; one that is not in the register is a fault. */
  public List<SourceKey> keys(Row row, String column) {
    List<SourceKey> keys = new ArrayList<>();
    for (String text : row.list(column)) {
      if (!text.matches("[a-z0-9][a-z0-9.-]*")) {
        row.fault(column, Message.of("fault.cell-source-key", text));
      } else if (!byKey.containsKey(new SourceKey(text))) {
        row.fault(column, Message.of("fault.cell-source", text));
      } else {
        keys.add(new SourceKey(text));
      }
    }
    return List.copyOf(keys);
  }

  private static final class Packaged {
    static final Sources REGISTER = read();

    private static Sources read() {
      Faults faults = new Faults();
      Sources sources = load(faults);
      faults.throwIfAny();
      return sources;
    }
  }
}
