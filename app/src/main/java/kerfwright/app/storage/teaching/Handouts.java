package kerfwright.app.storage.teaching;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.handout.Handout;

/** Where handouts are kept. */
public final class Handouts {
  private static final String NEWEST =
      "SELECT * FROM handout h"
          + " WHERE version = (SELECT MAX(n.version) FROM handout n WHERE n.id = h.id)";

  private final Sql sql;

  public Handouts(Database database) {
    this.sql = database.sql();
  }

  /**
   * Keeps a version of a handout.
   *
   * @return false where somebody else kept that version first, and nothing is kept
   */
  public boolean keep(Handout one) {
    return sql.addOnce(
        new Row("handout")
            .with("id", one.id())
            .with("version", one.version())
            .with("at_micros", one.at())
            .with("subject", one.subject())
            .with("title", one.title())
            .with("words", one.words())
            .numbered());
  }

  /** The newest version. */
  public Optional<Handout> find(UUID id) {
    return sql.one(Handout.class, NEWEST + " AND id = ?", id);
  }

  /** The newest versions of all, newest first, so many at most. */
  public List<Handout> newest(int most) {
    return sql.list(Handout.class, NEWEST + " ORDER BY sequence DESC, id DESC LIMIT ?", most);
  }
}
