package kerfwright.app.storage.teaching;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Topic;
import kerfwright.quantity.Identified;

/**
 * Where own questions, sets and answers are kept. A question is {@code {"text", "answers", "why",
 * "source"}}, a set {@code {"set": 1, "seed", "level", "topics", "count", "own": [questions]}};
 * {@code set} is the version of that layout.
 */
public final class Lessons {
  private static final int LAYOUT = 1;
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String ANSWERS =
      "SELECT set_id AS \"set\", alias, number, topic, kind, option_given AS \"option\","
          + " was_right AS \"right\", at_micros FROM teaching_answer ";

  private final Sql sql;

  public Lessons(Database database) {
    this.sql = database.sql();
  }

  /** Own questions, the newest first. */
  public List<OwnQuestion> questions() {
    // ids are ordered by time
    return sql.list(Lessons::question, "SELECT document FROM teaching_question ORDER BY id DESC");
  }

  public Optional<OwnQuestion> question(UUID id) {
    return sql.one(Lessons::question, "SELECT document FROM teaching_question WHERE id = ?", id);
  }

  /**
   * Keeps a new question, or a changed one as the version after the one that is kept.
   *
   * @return false where somebody else changed it first, and nothing is kept
   */
  public boolean keep(OwnQuestion question) {
    Row row =
        new Row("teaching_question")
            .with("id", question.id())
            .with("version", question.version())
            .with("document", json(question).toString());
    return question.version() == 1 ? sql.addOnce(row) : sql.next(row);
  }

  /** Forgets a question; sets made with it keep it. */
  public void forget(UUID question) {
    sql.change("DELETE FROM teaching_question WHERE id = ?", question);
  }

  /** Forgets everything under an alias. */
  public void forget(String alias) {
    sql.change("DELETE FROM teaching_answer WHERE alias = ?", alias);
  }

  public void keep(QuestionSet set) {
    ObjectNode json = JSON.createObjectNode();
    json.put("set", LAYOUT).put("seed", set.seed()).put("level", set.level().id());
    json.put("count", set.count());
    set.topics().forEach(topic -> json.withArray("/topics").add(topic.name()));
    set.own().forEach(one -> json.withArray("/own").add(json(one)));
    sql.add(
        new Row("teaching_set")
            .with("id", set.id())
            .with("at_micros", set.at())
            .with("document", json.toString()));
  }

  public Optional<QuestionSet> set(UUID id) {
    return sql.one(Lessons::set, "SELECT * FROM teaching_set WHERE id = ?", id);
  }

  /**
   * Keeps an answer.
   *
   * @return false where this question was answered before, and nothing is kept
   */
  public boolean answer(Given given) {
    return sql.addOnce(
        new Row("teaching_answer")
            .with("set_id", given.set())
            .with("alias", given.alias())
            .with("number", given.number())
            .with("topic", given.topic())
            .with("kind", given.kind())
            .with("option_given", given.option())
            .with("was_right", given.right())
            .with("at_micros", given.at())
            .numbered());
  }

  /** Answers to a set under an alias, in the order of the questions. */
  public List<Given> answers(UUID set, String alias) {
    return sql.list(
        Given.class, ANSWERS + "WHERE set_id = ? AND alias = ? ORDER BY number", set, alias);
  }

  /** Every answer under an alias, oldest first; of all aliases where it is empty. */
  public List<Given> answers(String alias) {
    return alias.isEmpty()
        ? sql.list(Given.class, ANSWERS + "ORDER BY alias, sequence, set_id, number")
        : sql.list(
            Given.class, ANSWERS + "WHERE alias = ? ORDER BY sequence, set_id, number", alias);
  }

  /** Who answered before, in order of the alphabet. */
  public List<String> aliases() {
    return sql.list(String.class, "SELECT DISTINCT alias FROM teaching_answer ORDER BY alias");
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
        Row.time(row, "at_micros"),
        json.path("seed").asLong(),
        Identified.of(Level.class, json.path("level").asText()).orElse(Level.MEDIUM),
        topics,
        json.path("count").asInt(),
        own);
  }

  private static JsonNode tree(String document) {
    try {
      return JSON.readTree(document);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("What is kept of a lesson cannot be read", broken);
    }
  }
}
