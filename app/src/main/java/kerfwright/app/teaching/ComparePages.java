package kerfwright.app.teaching;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.chairside.QueryFields;
import kerfwright.app.feature.Feature;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Access;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.template.Templates;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.CutCase;
import kerfwright.practice.kept.KeptCaseQuery;

/** Ways to cut one layer, and changes to one case, side by side. */
final class ComparePages implements Feature {
  private static final int CASES = 40;

  private final CasePlans plans;
  private final KeptCases kept;
  private final Templates templates;

  ComparePages(CasePlans plans, KeptCases kept, Templates templates) {
    this.plans = plans;
    this.kept = kept;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/teach/compare", this::layer, Access.SEE);
    config.routes.get("/teach/compare/case", this::ofCase, Access.CASES);
  }

  @Override
  public List<String> pages() {
    return List.of("/teach/compare");
  }

  private void layer(Context call) {
    Comparison comparison = Comparison.of(name -> ShowPages.typed(call, name));
    Map<String, Object> values = new HashMap<>();
    values.put("comparison", comparison);
    values.put("cautions", Sheets.cautions());
    values.put("cases", kept.list(KeptCaseQuery.newest(CASES)));
    templates.html(call, "teaching/compare.jte", values);
  }

  private void ofCase(Context call) {
    String query = ShowPages.typed(call, "of");
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
              name -> ShowPages.typed(call, name));
      templates.html(
          call,
          "teaching/compare-case.jte",
          Map.of("comparison", comparison, "whatIf", plan, "plan", plans.plan(cutCase)));
    } catch (BadInput bad) {
      call.redirect(query.isEmpty() ? "/teach/compare" : "/case?" + query);
    }
  }
}
