package kerfwright.app.storage.teaching;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.StoredDocument;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Topic;

/** Where own questions, sets and answers are kept. */
public final class Lessons {
  private static final String ANSWERS =
      "SELECT set_id AS \"set\", alias, number, topic, kind, option_given AS \"option\","
          + " was_right AS \"right\", at_micros FROM teaching_answer ";

  private final Sql sql;

  /** What of a set has no column of its own. */
  public record SetDocument(
      long seed, Level level, List<Topic> topics, int count, List<OwnQuestion> own) {}

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
            .with("document", StoredDocument.QUESTION.text(question));
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
    SetDocument document =
        new SetDocument(set.seed(), set.level(), set.topics(), set.count(), set.own());
    sql.add(
        new Row("teaching_set")
            .with("id", set.id())
            .with("at_micros", set.at())
            .with("document", StoredDocument.SET.text(document)));
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

  private static OwnQuestion question(ResultSet row) throws SQLException {
    return StoredDocument.QUESTION.read(row.getString("document"), OwnQuestion.class);
  }

  private static QuestionSet set(ResultSet row) throws SQLException {
    SetDocument document = StoredDocument.SET.read(row.getString("document"), SetDocument.class);
    return new QuestionSet(
        UUID.fromString(row.getString("id")),
        Row.time(row, "at_micros"),
        document.seed(),
        document.level(),
        document.topics(),
        document.count(),
        document.own());
  }
}
