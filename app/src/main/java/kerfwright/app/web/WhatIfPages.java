package kerfwright.app.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import kerfwright.app.feature.Feature;
import kerfwright.app.input.BadInput;
import kerfwright.app.plan.WhatIfForm;
import kerfwright.app.plan.WhatIfView;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.web.caseform.CaseForm;
import kerfwright.app.words.Say;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.CutCase;

/** What one change would do to a plan: beside it, or as a page of its own without script. */
final class WhatIfPages implements Feature {
  private final PlanService service;
  private final Templates templates;

  WhatIfPages(PlanService service, Templates templates) {
    this.service = service;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/plan/what-if", call -> answer(call, false), Access.SEE);
    config.routes.get("/plan/what-if/panel", call -> answer(call, true), Access.SEE);
  }

  private void answer(Context call, boolean fresh) {
    String query = Optional.ofNullable(call.queryParam("of")).orElse("");
    try {
      CutCase cutCase = service.read(CaseForm.ofQuery(query).toNode());
      WhatIf plan = service.whatIf(cutCase).orElse(null);
      if (plan == null) {
        call.redirect("/plan?" + query);
        return;
      }
      Say say = templates.say(call);
      WhatIfForm asked =
          WhatIfForm.of(say, plan, cutCase.coolant().millilitresPerMinute(), sent(call), fresh);
      WhatIfView view = WhatIfView.of(say, asked, plan);
      boolean part = call.header("HX-Request") != null;
      String template =
          !part ? "plan/whatif-page.jte" : fresh ? "plan/whatif-panel.jte" : "plan/whatif.jte";
      templates.html(
          call,
          template,
          part && !fresh
              ? Map.of("view", view)
              : Map.of("asked", asked, "view", view, "query", query));
    } catch (BadInput bad) {
      call.redirect("/case?" + query);
    }
  }

  private static Map<String, String> sent(Context call) {
    Map<String, String> sent = new HashMap<>();
    call.queryParamMap().forEach((name, values) -> sent.put(name, values.get(0)));
    return sent;
  }
}
