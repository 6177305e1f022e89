package kerfwright.catalogue.piece;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.data.Topic;

/** The kinds of pieces that are no rotary instruments, by id. */
public final class PieceKinds {
  private static final List<PieceKind> ALL =
      Topic.read(
          "piece/values.csv",
          row -> {
            row.provenance();
            return new PieceKind(
                row.text("id"),
                row.requiredOneOf("sort", PieceKind.Sort.class),
                row.yes("hollow"),
                row.yes("oiled"));
          });

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
}
