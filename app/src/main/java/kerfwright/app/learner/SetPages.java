package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Remembered;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.teaching.Alias;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.Question;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Tally;
import kerfwright.practice.teaching.Topic;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** Sets of questions: made, answered one by one with the explanation at once, told by topic. */
record SetPages(LearnerPages.Parts with, Templates templates) implements Feature {
  private static final String ALIAS = "learner";

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/learn/sets", call -> form(call, List.of()), Access.SEE);
    config.routes.post("/learn/sets", this::make, Access.LEARN);
    config.routes.get("/learn/sets/{id}", this::question, Access.SEE);
    config.routes.post("/learn/sets/{id}", this::answer, Access.LEARN);
    config.routes.get("/learn/sets/{id}/result", this::result, Access.SEE);
  }

  @Override
  public List<String> pages() {
    return List.of("/learn/sets");
  }

  private void form(Context call, List<String> faults) {
    Map<String, Object> values = new HashMap<>();
    String sent = call.formParam("alias");
    values.put("alias", sent == null ? Remembered.of(call, ALIAS) : sent);
    values.put("faults", faults);
    values.put("hasOwn", !with.lessons().questions().isEmpty());
    values.put("topics", sent == null ? List.of(Topic.values()) : topics(call));
    values.put("level", level(call));
    values.put("count", count(call));
    templates.html(call, "learner/sets.jte", values);
  }

  private static List<Topic> topics(Context call) {
    return Arrays.stream(Topic.values())
        .filter(topic -> call.formParams("topic").contains(topic.id()))
        .toList();
  }

  private static Level level(Context call) {
    return Identified.of(Level.class, Sent.text(call, "level")).orElse(Level.MEDIUM);
  }

  private static int count(Context call) {
    String text = Sent.text(call, "count");
    int count = text.matches("\\d{1,3}") ? Integer.parseInt(text) : 10;
    return Math.max(1, Math.min(QuestionSet.MOST, count));
  }

  private void make(Context call) {
    boolean together = call.formParam("class") != null;
    Optional<String> alias = Alias.of(call.formParam("alias"));
    List<Topic> topics = topics(call);
    List<String> faults = new ArrayList<>();
    if (alias.isEmpty() && !together) {
      faults.add("learner.fault-alias");
    }
    String seed = Sent.text(call, "seed");
    if (!seed.matches("\\d{0,9}")) {
      faults.add("learner.fault-seed");
    }
    boolean nothingOwn = topics.equals(List.of(Topic.OWN)) && with.lessons().questions().isEmpty();
    if (topics.isEmpty() || nothingOwn) {
      faults.add("learner.fault-topics");
    }
    if (!faults.isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      form(call, faults);
      return;
    }
    UUID id = with.newId().get();
    QuestionSet set =
        new QuestionSet(
            id,
            with.clock().instant().truncatedTo(ChronoUnit.MICROS),
            seed.isEmpty() ? id.getLeastSignificantBits() & 0x3fffffff : Long.parseLong(seed),
            level(call),
            topics,
            count(call),
            topics.contains(Topic.OWN) ? with.lessons().questions() : List.of());
    with.lessons().keep(set);
    alias.ifPresent(one -> Remembered.keep(call, ALIAS, one, Duration.ofHours(12)));
    call.redirect(
        together ? "/learn/class/new?set=" + id : "/learn/sets/" + id + "?alias=" + alias.get(),
        HttpStatus.SEE_OTHER);
  }

  private QuestionSet set(Context call) {
    return Sent.id(call.pathParam("id"))
        .flatMap(with.lessons()::set)
        .orElseThrow(NotFoundResponse::new);
  }

  private static String alias(@Nullable String sent) {
    return Alias.of(sent).orElseThrow(NotFoundResponse::new);
  }

  private void question(Context call) {
    QuestionSet set = set(call);
    String alias = alias(call.queryParam("alias"));
    List<Question> all = QuestionWords.of(set);
    List<Given> given = with.lessons().answers(set.id(), alias);
    String wanted = call.queryParam("n");
    // one beyond the last where all have an answer
    int next =
        IntStream.rangeClosed(1, all.size())
            .filter(n -> given.stream().noneMatch(answer -> answer.number() == n))
            .findFirst()
            .orElse(all.size() + 1);
    int number = wanted != null && wanted.matches("\\d{1,3}") ? Integer.parseInt(wanted) : next;
    if (number < 1 || number > all.size()) {
      call.redirect("/learn/sets/" + set.id() + "/result?alias=" + alias);
      return;
    }
    Map<String, Object> values = new HashMap<>();
    values.put("set", set);
    values.put("alias", alias);
    values.put("number", number);
    values.put("count", all.size());
    values.put("question", all.get(number - 1));
    values.put(
        "given", given.stream().filter(one -> one.number() == number).findFirst().orElse(null));
    values.put("next", next);
    templates.html(call, "learner/question.jte", values);
  }

  private void answer(Context call) {
    QuestionSet set = set(call);
    String alias = alias(call.formParam("alias"));
    List<Question> all = QuestionWords.of(set);
    String number = Sent.text(call, "n");
    String option = Sent.text(call, "option");
    if (!number.matches("[1-9]\\d?") || Integer.parseInt(number) > all.size()) {
      throw new NotFoundResponse();
    }
    int asked = Integer.parseInt(number);
    if (option.matches("[0-3]")) {
      int given = Integer.parseInt(option);
      Question question = all.get(asked - 1);
      with.lessons()
          .answer(Given.of(set.id(), alias, asked, question, given, with.clock().instant()));
    }
    call.redirect(
        "/learn/sets/" + set.id() + "?alias=" + alias + "&n=" + asked, HttpStatus.SEE_OTHER);
  }

  private void result(Context call) {
    QuestionSet set = set(call);
    String alias = alias(call.queryParam("alias"));
    List<Given> given = with.lessons().answers(set.id(), alias);
    Map<String, Object> values = new HashMap<>();
    values.put("set", set);
    values.put("alias", alias);
    values.put("questions", QuestionWords.of(set));
    values.put("given", given);
    values.put("topics", Tally.by(given, Given::topic));
    templates.html(call, "learner/result.jte", values);
  }
}
