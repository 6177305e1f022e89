package kerfwright.app.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.template.Templates;
import kerfwright.planner.casework.CutCase;
import kerfwright.practice.drawer.InstrumentState;

/** The first page. */
final class StartPages {
  private final PlanDesk desk;
  private final Templates templates;
  private final List<CutCase> examples;
  private final boolean demo;

  StartPages(PlanDesk desk, Templates templates, List<CutCase> examples, boolean demo) {
    this.desk = desk;
    this.templates = templates;
    this.examples = List.copyOf(examples);
    this.demo = demo;
  }

  void start(Context call) {
    List<ExampleCase> links = new ArrayList<>();
    for (CutCase example : examples) {
      links.add(new ExampleCase(example, FilledForm.of(example).query()));
    }
    Map<InstrumentState, Integer> pieces = desk.drawer().pieces();
    int all = pieces.values().stream().mapToInt(Integer::intValue).sum();
    int clean = pieces.getOrDefault(InstrumentState.CLEAN, 0);
    templates.html(
        call,
        "start.jte",
        Map.of("examples", links, "demo", demo, "instruments", all, "clean", clean));
  }
}
