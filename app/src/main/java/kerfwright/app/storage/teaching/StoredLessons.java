package kerfwright.app.storage.teaching;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.StoredDocument;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Lessons;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Topic;
import org.jdbi.v3.core.Jdbi;

/** Questions, sets and answers in a database. */
public final class StoredLessons implements Lessons {
  private static final String ANSWERS =
      "SELECT set_id, alias, number, topic, kind, option_given, was_right, at_micros"
          + " FROM teaching_answer ";

  private final Jdbi jdbi;

  /** What of a set has no column of its own. */
  public record SetDocument(
      long seed, Level level, List<Topic> topics, int count, List<OwnQuestion> own) {}

  public StoredLessons(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public List<OwnQuestion> questions() {
    // ids are ordered by time
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT document FROM teaching_question ORDER BY id DESC")
                .mapTo(String.class)
                .map(text -> StoredDocument.QUESTION.read(text, OwnQuestion.class))
                .list());
  }

  @Override
  public Optional<OwnQuestion> question(UUID id) {
    return questions().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  @Override
  public boolean keep(OwnQuestion question) {
    String sql =
        question.version() == 1
            ? "INSERT INTO teaching_question (id, version, document) VALUES (:id, :version,"
                + " :document) ON CONFLICT (id) DO NOTHING"
            : "UPDATE teaching_question SET version = :version, document = :document"
                + " WHERE id = :id AND version = :version - 1";
    return jdbi.withHandle(
            handle ->
                handle
                    .createUpdate(sql)
                    .bind("id", question.id().toString())
                    .bind("version", question.version())
                    .bind("document", StoredDocument.QUESTION.text(question))
                    .execute())
        == 1;
  }

  @Override
  public void forget(UUID question) {
    change("DELETE FROM teaching_question WHERE id = :it", question.toString());
  }

  @Override
  public void forget(String alias) {
    change("DELETE FROM teaching_answer WHERE alias = :it", alias);
  }

  private void change(String sql, String it) {
    jdbi.useHandle(handle -> handle.createUpdate(sql).bind("it", it).execute());
  }

  @Override
  public void keep(QuestionSet set) {
    SetDocument document =
        new SetDocument(set.seed(), set.level(), set.topics(), set.count(), set.own());
    jdbi.useHandle(
        new Row("teaching_set")
                .with("id", set.id())
                .with("at_micros", set.at())
                .with("document", StoredDocument.SET.text(document))
            ::add);
  }

  @Override
  public Optional<QuestionSet> set(UUID id) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT id, at_micros, document FROM teaching_set WHERE id = :id")
                .bind("id", id.toString())
                .map((row, context) -> set(row))
                .findFirst());
  }

  @Override
  public boolean answer(Given given) {
    return jdbi.withHandle(
        new Row("teaching_answer")
                .with("set_id", given.set())
                .with("alias", given.alias())
                .with("number", given.number())
                .with("topic", given.topic())
                .with("kind", given.kind())
                .with("option_given", given.option())
                .with("was_right", given.right())
                .with("at_micros", given.at())
            ::addNumbered);
  }

  @Override
  public List<Given> answers(UUID set, String alias) {
    return given(
        ANSWERS + "WHERE set_id = :set AND alias = :alias ORDER BY number",
        Map.of("set", set.toString(), "alias", alias));
  }

  @Override
  public List<Given> answers(String alias) {
    return alias.isEmpty()
        ? given(ANSWERS + "ORDER BY alias, sequence, set_id, number", Map.of())
        : given(
            ANSWERS + "WHERE alias = :alias ORDER BY sequence, set_id, number",
            Map.of("alias", alias));
  }

  private List<Given> given(String sql, Map<String, String> values) {
    return jdbi.withHandle(
        handle -> handle.createQuery(sql).bindMap(values).map((row, context) -> given(row)).list());
  }

  @Override
  public List<String> aliases() {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT DISTINCT alias FROM teaching_answer ORDER BY alias")
                .mapTo(String.class)
                .list());
  }

  private static QuestionSet set(ResultSet row) throws SQLException {
    SetDocument document = StoredDocument.SET.read(row.getString("document"), SetDocument.class);
    return new QuestionSet(
        UUID.fromString(row.getString("id")),
        Row.instant(row.getLong("at_micros")),
        document.seed(),
        document.level(),
        document.topics(),
        document.count(),
        document.own());
  }

  private static Given given(ResultSet row) throws SQLException {
    return new Given(
        UUID.fromString(row.getString("set_id")),
        row.getString("alias"),
        row.getInt("number"),
        row.getString("topic"),
        row.getString("kind"),
        row.getInt("option_given"),
        row.getInt("was_right") == 1,
        Row.instant(row.getLong("at_micros")));
  }
}
