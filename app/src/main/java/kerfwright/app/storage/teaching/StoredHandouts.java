package kerfwright.app.storage.teaching;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.practice.handout.Handout;
import kerfwright.practice.handout.Handouts;
import org.jdbi.v3.core.Jdbi;

/** The handouts in a database. */
public final class StoredHandouts implements Handouts {
  private static final String NEWEST =
      "SELECT id, version, at_micros, subject, title, words FROM handout h"
          + " WHERE version = (SELECT MAX(n.version) FROM handout n WHERE n.id = h.id)";

  private final Jdbi jdbi;

  public StoredHandouts(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public boolean keep(Handout one) {
    return jdbi.withHandle(
        new Row("handout")
                .with("id", one.id())
                .with("version", one.version())
                .with("at_micros", one.at())
                .with("subject", one.subject())
                .with("title", one.title())
                .with("words", one.words())
            ::addNumbered);
  }

  @Override
  public Optional<Handout> find(UUID id) {
    return ask(" AND id = :id", Map.of("id", id.toString())).stream().findFirst();
  }

  @Override
  public List<Handout> newest(int most) {
    return ask(" ORDER BY sequence DESC, id DESC LIMIT :most", Map.of("most", most));
  }

  private List<Handout> ask(String more, Map<String, Object> values) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(NEWEST + more)
                .bindMap(values)
                .map(
                    (row, context) ->
                        new Handout(
                            UUID.fromString(row.getString("id")),
                            row.getInt("version"),
                            Row.instant(row.getLong("at_micros")),
                            row.getString("subject"),
                            row.getString("title"),
                            row.getString("words")))
                .list());
  }
}
