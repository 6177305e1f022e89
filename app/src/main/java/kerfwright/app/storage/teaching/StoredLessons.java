package kerfwright.app.storage.teaching;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Lessons;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Topic;
import kerfwright.quantity.Identified;
import org.jdbi.v3.core.Jdbi;

/**
 * Questions, sets and answers in a database. A question is {@code {"text", "answers", "why",
 * "source"}}, a set {@code {"set": 1, "seed", "level", "topics", "count", "own": [questions]}};
 * {@code set} is the version of that layout.
 */
public final class StoredLessons implements Lessons {
  private static final int LAYOUT = 1;
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String ANSWERS =
      "SELECT set_id, alias, number, topic, kind, option_given, was_right, at_micros"
          + " FROM teaching_answer ";

  private final Jdbi jdbi;

  public StoredLessons(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public List<OwnQuestion> questions() {
    // ids are ordered by time
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT id, version, document FROM teaching_question ORDER BY id DESC")
                .map((row, context) -> question(row))
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
                    .bind("document", json(question).toString())
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
    ObjectNode json = JSON.createObjectNode();
    json.put("set", LAYOUT).put("seed", set.seed()).put("level", set.level().id());
    json.put("count", set.count());
    set.topics().forEach(topic -> json.withArray("/topics").add(topic.name()));
    set.own().forEach(one -> json.withArray("/own").add(json(one)));
    jdbi.useHandle(
        new Row("teaching_set")
                .with("id", set.id())
                .with("at_micros", set.at())
                .with("document", json.toString())
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

  private static ObjectNode json(OwnQuestion question) {
    ObjectNode json = JSON.createObjectNode();
    json.put("id", question.id().toString()).put("version", question.version());
    json.put("text", question.text()).put("why", question.why());
    json.put("source", question.source());
    question.answers().forEach(answer -> json.withArray("/answers").add(answer));
    return json;
  }

  private static OwnQuestion question(ResultSet row) throws SQLException {
    return question(tree(row.getString("document")));
  }

  private static OwnQuestion question(JsonNode json) {
    List<String> answers = new ArrayList<>();
    json.path("answers").forEach(answer -> answers.add(answer.asText()));
    return new OwnQuestion(
        UUID.fromString(json.path("id").asText()),
        json.path("version").asInt(),
        json.path("text").asText(),
        answers,
        json.path("why").asText(),
        json.path("source").asText());
  }

  private static QuestionSet set(ResultSet row) throws SQLException {
    String id = row.getString("id");
    JsonNode json = tree(row.getString("document"));
    if (json.path("set").asInt() != LAYOUT) {
      throw new IllegalStateException("Set " + id + " was kept by a newer program");
    }
    List<Topic> topics = new ArrayList<>();
    json.path("topics").forEach(topic -> topics.add(Topic.valueOf(topic.asText())));
    List<OwnQuestion> own = new ArrayList<>();
    json.path("own").forEach(one -> own.add(question(one)));
    return new QuestionSet(
        UUID.fromString(id),
        Row.instant(row.getLong("at_micros")),
        json.path("seed").asLong(),
        Identified.of(Level.class, json.path("level").asText()).orElse(Level.MEDIUM),
        topics,
        json.path("count").asInt(),
        own);
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

  private static JsonNode tree(String document) {
    try {
      return JSON.readTree(document);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("What is kept of a lesson cannot be read", broken);
    }
  }
}
