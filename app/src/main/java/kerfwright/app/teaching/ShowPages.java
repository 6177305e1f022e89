package kerfwright.app.teaching;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** The lectures and the lesson on numbers, as they are shown. */
final class ShowPages implements Feature {
  private final Templates templates;

  ShowPages(Templates templates) {
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get(
        "/teach/show", call -> templates.html(call, "teaching/show.jte", Map.of()), Access.SEE);
    config.routes.get("/teach/show/{topic}", this::lecture, Access.SEE);
    config.routes.get("/teach/number", this::number, Access.SEE);
  }

  @Override
  public List<String> pages() {
    return Stream.concat(
            Stream.of("/teach/show", "/teach/number"),
            Arrays.stream(Topic.values()).map(one -> "/teach/show/" + one.id()))
        .toList();
  }

  private void lecture(Context call) {
    Topic topic =
        Identified.of(Topic.class, call.pathParam("topic")).orElseThrow(NotFoundResponse::new);
    Say say = templates.say(call);
    Lecture lecture = Lectures.of(say, topic, Scene.of(topic, name -> typed(call, name)));
    int step = (int) Scene.number(typed(call, "step"), 1, lecture.frames().size(), 1);
    boolean part = call.header("HX-Request") != null;
    templates.html(
        call,
        part ? "teaching/frames.jte" : "teaching/lecture.jte",
        part
            ? Map.of("lecture", lecture, "step", step)
            : Map.of("lecture", lecture, "step", step, "cautions", Sheets.cautions()));
  }

  private void number(Context call) {
    NumberLesson lesson = NumberLesson.of(templates.say(call), name -> typed(call, name));
    boolean part = call.header("HX-Request") != null;
    templates.html(
        call, part ? "teaching/number-parts.jte" : "teaching/number.jte", Map.of("lesson", lesson));
  }

  static String typed(Context call, String name) {
    @Nullable String text = call.queryParam(name);
    return text == null ? "" : text.strip();
  }
}
