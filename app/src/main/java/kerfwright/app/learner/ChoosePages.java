package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.planner.WhatHappens;
import kerfwright.quantity.Identified;

/** A case in which the learner chooses before seeing the plan, and what the choice would do. */
record ChoosePages(LessonCases cases, Templates templates) implements Feature {
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
    List<String> mistakes = Arrays.stream(Mistake.values()).map(Mistake::id).toList();
    templates.html(call, "learner/cases.jte", Map.of("cases", cases.all(), "mistakes", mistakes));
  }

  private WhatHappens lesson(String reference) {
    return cases.find(reference).orElseThrow(NotFoundResponse::new);
  }

  private void choose(Context call) {
    WhatHappens lesson = lesson(call.pathParam("case"));
    ChoiceForm form = ChoiceForm.of(lesson, call::queryParam);
    Map<String, Object> values = new HashMap<>();
    values.put("lesson", lesson);
    values.put("form", form);
    values.put(
        "view",
        form.asked() ? new ChoiceView(templates.say(call), lesson.of(form.choices())) : null);
    if (!form.faults().isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    }
    templates.html(call, "learner/choose.jte", values);
  }

  /** A mistake is a case with its choice filled in. */
  private void mistake(Context call) {
    Mistake mistake =
        Identified.of(Mistake.class, call.pathParam("id")).orElseThrow(NotFoundResponse::new);
    call.redirect(mistake.address(lesson(mistake.reference()).planned()));
  }
}
