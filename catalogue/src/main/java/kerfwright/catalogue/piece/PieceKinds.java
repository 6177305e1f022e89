package kerfwright.catalogue.piece;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.DataFault;

/** The kinds of pieces that are no rotary instruments, by id. */
public final class PieceKinds {
  private record Entry(PieceKind kind, kerfwright.catalogue.Provenance provenance) {}

  private static final Topic<Entry> TOPIC =
      Topic.read(
          "piece",
          List.of("sort", "hollow", "oiled"),
          row ->
              new Entry(
                  new PieceKind(
                      row.text("id"),
                      row.requiredOneOf("sort", PieceKind.Sort.values(), PieceKind.Sort::id),
                      row.yes("hollow"),
                      row.yes("oiled")),
                  row.provenance()));

  private static final List<PieceKind> ALL = TOPIC.rows().stream().map(Entry::kind).toList();

  private PieceKinds() {}

  /** Every kind, in the order of the file. */
  public static List<PieceKind> all() {
    return ALL;
  }

  /** The kind with this id; upper and lower case count the same. */
  public static Optional<PieceKind> byId(String id) {
    String wanted = id.strip().toLowerCase(Locale.ROOT);
    return ALL.stream().filter(one -> one.id().equals(wanted)).findFirst();
  }

  public static List<DataFault> dataFaults() {
    return TOPIC.faults();
  }
}
