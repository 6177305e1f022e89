package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.label.QrDrawing;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.teaching.ClassRoom;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.practice.teaching.Tally;

/** The teacher's screen: code and address, one question at a time, how the answers spread. */
record ClassPages(LearnerPages.Parts with, Templates templates, ClassDoor door) implements Feature {
  private static final String PAGE = "/learn/class";

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get(PAGE, this::page, Access.WORK);
    config.routes.get(PAGE + "/live", this::live, Access.WORK);
    config.routes.get(PAGE + "/new", this::ask, Access.WORK);
    config.routes.post(PAGE, this::open, Access.WORK);
    config.routes.post(PAGE + "/on", this::on, Access.WORK);
    config.routes.post(PAGE + "/end", this::end, Access.WORK);
  }

  private QuestionSet set(String sent) {
    return Sent.id(sent).flatMap(with.lessons()::set).orElseThrow(NotFoundResponse::new);
  }

  /** Says what opening does before it is done: the network reaches the questions. */
  private void ask(Context call) {
    show(call, set(String.valueOf(call.queryParam("set"))), "");
  }

  private void show(Context call, QuestionSet set, String fault) {
    Map<String, Object> values = new HashMap<>();
    values.put("set", set);
    values.put("count", QuestionWords.of(set).size());
    values.put("address", with.address().get().orElse(""));
    values.put("running", door.now().isPresent());
    values.put("fault", fault);
    templates.html(call, "learner/classNew.jte", values);
  }

  private void open(Context call) {
    QuestionSet set = set(Sent.text(call, "set"));
    Optional<String> address = with.address().get();
    if (address.isEmpty()) {
      call.status(HttpStatus.CONFLICT);
      show(call, set, "learner.no-network");
      return;
    }
    door.now().ifPresent(before -> keep(before.room()));
    door.open(set, address.get());
    call.redirect(PAGE, HttpStatus.SEE_OTHER);
  }

  private void page(Context call) {
    ClassDoor.Open open = door.now().orElse(null);
    if (open == null) {
      call.redirect("/learn");
      return;
    }
    Map<String, Object> values = new HashMap<>();
    values.put("url", open.url());
    values.put("code", open.room().code());
    values.put("seen", open.room().look());
    values.put("qr", QrDrawing.of(open.url(), templates.say(call).at("learner.qr", open.url())));
    values.put("asking", call.queryParam("end") != null);
    values.put("topics", Tally.by(given(open.room()), Given::topic));
    templates.html(call, "learner/class.jte", values);
  }

  private void live(Context call) {
    ClassDoor.Open open = door.now().orElseThrow(NotFoundResponse::new);
    templates.html(call, "learner/live.jte", Map.of("seen", open.room().look()));
  }

  private void on(Context call) {
    String step = Sent.text(call, "step");
    door.now()
        .ifPresent(
            open -> {
              if (step.matches("\\d{1,6}")) {
                open.room().on(Integer.parseInt(step));
              }
              keep(open.room());
            });
    call.redirect(PAGE, HttpStatus.SEE_OTHER);
  }

  private void end(Context call) {
    door.now().ifPresent(open -> keep(open.room()));
    door.close();
    call.redirect("/learn", HttpStatus.SEE_OTHER);
  }

  /** What was answered so far; an answer that is kept already stays as it is. */
  private void keep(ClassRoom room) {
    if (room.look().stage() != ClassRoom.Stage.ASKING) {
      given(room).forEach(with.lessons()::answer);
    }
  }

  private List<Given> given(ClassRoom room) {
    return room.given(with.clock().instant());
  }
}
