package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.Question;

/** The teacher's own questions: written, changed, deleted after asking. */
record OwnPages(LearnerPages.Parts with, Templates templates) implements Feature {
  private static final List<String> BLANK = List.of("", "", "", "");

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get(
        "/learn/questions",
        call -> show(call, new OwnQuestion(with.newId().get(), 0, "", BLANK, "", ""), List.of()),
        Access.WORK);
    config.routes.get(
        "/learn/questions/{id}", call -> show(call, known(call), List.of()), Access.WORK);
    config.routes.post("/learn/questions/{id}", this::keep, Access.WORK);
    config.routes.post("/learn/questions/{id}/delete", this::delete, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/learn/questions");
  }

  private static UUID id(Context call) {
    return Sent.id(call.pathParam("id")).orElseThrow(NotFoundResponse::new);
  }

  private OwnQuestion known(Context call) {
    return with.lessons().question(id(call)).orElseThrow(NotFoundResponse::new);
  }

  private void show(Context call, OwnQuestion question, List<String> faults) {
    Map<String, Object> values = new HashMap<>();
    values.put("all", with.lessons().questions());
    values.put("question", question);
    values.put("faults", faults);
    values.put("asking", call.queryParam("delete") != null && question.version() > 0);
    templates.html(call, "learner/own.jte", values);
  }

  private void keep(Context call) {
    OwnQuestion typed =
        new OwnQuestion(
            id(call),
            Math.max(0, Sent.version(call)),
            Sent.text(call, "text"),
            IntStream.range(0, Question.OPTIONS)
                .mapToObj(i -> Sent.text(call, "answer" + i))
                .toList(),
            Sent.text(call, "why"),
            Sent.text(call, "source"));
    List<String> faults = typed.faults();
    if (faults.isEmpty() && with.lessons().keep(typed.next())) {
      call.redirect("/learn/questions", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(faults.isEmpty() ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
    show(call, typed, faults.isEmpty() ? List.of("setting.changed-elsewhere") : faults);
  }

  private void delete(Context call) {
    with.lessons().forget(id(call));
    call.redirect("/learn/questions", HttpStatus.SEE_OTHER);
  }
}
