package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;

/** A case in which the learner chooses before seeing the plan, and what the choice would do. */
final class ChoosePages implements Feature {
  private final LessonCases cases;
  private final Templates templates;

  ChoosePages(LessonCases cases, Templates templates) {
    this.cases = cases;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/learn/choose", this::list, Access.SEE);
    config.routes.get("/learn/choose/{case}", this::choose, Access.SEE);
    config.routes.get("/learn/mistake/{id}", this::mistake, Access.SEE);
  }

  @Override
  public List<String> pages() {
    return List.of("/learn/choose", "/learn/choose/" + Mistake.DRY_ON_VITAL.reference());
  }

  private void list(Context call) {
    templates.html(
        call,
        "learner/cases.jte",
        Map.of(
            "cases",
            cases.all(),
            "mistakes",
            List.of(Mistake.values()).stream().map(Mistake::id).toList()));
  }

  private LessonCases.Lesson lesson(String reference) {
    return cases.find(reference).orElseThrow(NotFoundResponse::new);
  }

  private void choose(Context call) {
    LessonCases.Lesson lesson = lesson(call.pathParam("case"));
    ChoiceForm form = ChoiceForm.of(lesson, call::queryParam);
    Say say = templates.say(call);
    Map<String, Object> values = new HashMap<>();
    values.put("cutCase", lesson.cutCase());
    values.put("planned", lesson.happens().planned());
    values.put("drawer", lesson.drawer().instruments());
    values.put("cautions", lesson.happens().cautions());
    values.put("form", form);
    values.put("faulty", !form.faults().isEmpty());
    values.put(
        "view", form.asked() ? new ChoiceView(say, lesson.happens().of(form.choices())) : null);
    if (!form.faults().isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    }
    templates.html(call, "learner/choose.jte", values);
  }

  /** A mistake is a case with its choice filled in. */
  private void mistake(Context call) {
    Mistake mistake =
        List.of(Mistake.values()).stream()
            .filter(one -> one.id().equals(call.pathParam("id")))
            .findFirst()
            .orElseThrow(NotFoundResponse::new);
    String fields =
        ChoiceForm.of(mistake, lesson(mistake.reference()).happens().planned()).entrySet().stream()
            .map(one -> one.getKey() + "=" + encoded(one.getValue()))
            .collect(Collectors.joining("&"));
    call.redirect("/learn/choose/" + mistake.reference() + "?" + fields + "#result");
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
