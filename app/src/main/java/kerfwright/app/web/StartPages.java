package kerfwright.app.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.template.Templates;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;

/** The first page and the drawer. */
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
    List<DrawerInstrument> all = desk.drawer().instruments();
    int clean =
        (int) all.stream().filter(one -> one.state() == DrawerInstrument.State.CLEAN).count();
    call.html(
        templates.render(
            "start.jte",
            Map.of("examples", links, "demo", demo, "instruments", all.size(), "clean", clean)));
  }

  void drawer(Context call) {
    call.html(
        templates.render(
            "drawer.jte", Map.of("instruments", desk.drawer().instruments(), "demo", demo)));
  }
}
