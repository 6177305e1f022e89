package kerfwright.app.teaching;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.app.chairside.QueryFields;
import kerfwright.app.feature.Feature;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Access;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.CutCase;
import kerfwright.practice.kept.KeptCaseQuery;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** What is shown: the ways to teach, lectures, claims, the lesson on numbers, and comparisons. */
record ShowPages(CasePlans plans, KeptCases kept, Templates templates) implements Feature {
  private static final int CASES = 40;

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get(
        "/teach",
        call -> templates.html(call, "teaching/start.jte", Map.of("cards", Card.all())),
        Access.SEE);
    config.routes.get(
        "/teach/claims", call -> templates.html(call, "teaching/claims.jte", Map.of()), Access.SEE);
    config.routes.get(
        "/teach/show", call -> templates.html(call, "teaching/show.jte", Map.of()), Access.SEE);
    config.routes.get("/teach/show/{topic}", this::lecture, Access.SEE);
    config.routes.get("/teach/number", this::number, Access.SEE);
    config.routes.get("/teach/compare", this::layer, Access.SEE);
    config.routes.get("/teach/compare/case", this::ofCase, Access.CASES);
  }

  @Override
  public List<String> pages() {
    return Stream.concat(
            Stream.of("/teach", "/teach/claims", "/teach/show", "/teach/number", "/teach/compare"),
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
        Map.of("lecture", lecture, "step", step, "cautions", Sheets.cautions()));
  }

  private void number(Context call) {
    NumberLesson lesson = NumberLesson.of(templates.say(call), name -> typed(call, name));
    boolean part = call.header("HX-Request") != null;
    templates.html(
        call, part ? "teaching/number-parts.jte" : "teaching/number.jte", Map.of("lesson", lesson));
  }

  private void layer(Context call) {
    Comparison comparison = Comparison.of(name -> typed(call, name));
    templates.html(
        call,
        "teaching/compare.jte",
        Map.of(
            "comparison", comparison,
            "cautions", Sheets.cautions(),
            "cases", kept.list(KeptCaseQuery.newest(CASES))));
  }

  private void ofCase(Context call) {
    String query = typed(call, "of");
    try {
      CutCase cutCase = plans.read(QueryFields.of(query));
      WhatIf plan = plans.whatIf(cutCase).orElse(null);
      if (plan == null) {
        call.redirect("/plan?" + query);
        return;
      }
      CaseComparison comparison =
          CaseComparison.of(
              templates.say(call),
              query,
              plan,
              cutCase.coolant().millilitresPerMinute(),
              name -> typed(call, name));
      templates.html(
          call,
          "teaching/compare-case.jte",
          Map.of("comparison", comparison, "whatIf", plan, "plan", plans.plan(cutCase)));
    } catch (BadInput bad) {
      call.redirect(query.isEmpty() ? "/teach/compare" : "/case?" + query);
    }
  }

  static String typed(Context call, String name) {
    @Nullable String text = call.queryParam(name);
    return text == null ? "" : text.strip();
  }
}
