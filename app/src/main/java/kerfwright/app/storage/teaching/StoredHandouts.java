package kerfwright.app.storage.teaching;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Sequence;
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
        handle ->
            handle
                    .createUpdate(
                        "INSERT INTO handout (id, version, at_micros, subject, title, words, sequence)"
                            + " VALUES (:id, :version, :at, :subject, :title, :words, "
                            + Sequence.next("handout")
                            + ")"
                            + " ON CONFLICT (id, version) DO NOTHING")
                    .bind("id", one.id().toString())
                    .bind("version", one.version())
                    .bind("at", ChronoUnit.MICROS.between(Instant.EPOCH, one.at()))
                    .bind("subject", one.subject())
                    .bind("title", one.title())
                    .bind("words", one.words())
                    .execute()
                == 1);
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
                            Instant.EPOCH.plus(row.getLong("at_micros"), ChronoUnit.MICROS),
                            row.getString("subject"),
                            row.getString("title"),
                            row.getString("words")))
                .list());
  }
}
