package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.plan.WhatIfForm;
import kerfwright.app.plan.WhatIfView;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.Varied;
import kerfwright.planner.WhatIf;
import kerfwright.planner.uncertainty.Against;
import org.jspecify.annotations.Nullable;

/**
 * A plan with one to three changes to one of its steps, side by side.
 *
 * @param query the case
 * @param steps how many steps the plan has
 * @param planned the step as planned
 * @param changes what was changed
 */
public record CaseComparison(String query, int steps, WhatIfForm planned, List<Change> changes) {
  static final int MOST = 3;
  private static final List<String> FIELDS = List.of("instrument", "rpm", "load", "water");

  public CaseComparison {
    changes = List.copyOf(changes);
  }

  /**
   * One change.
   *
   * @param asked what was asked
   * @param view its figures beside the plan's
   * @param rate the step's rate with it over that as planned, empty where it is refused
   * @param costS what the step costs as planned and with it, empty where it is refused
   * @param what its instrument, null where it is refused
   */
  public record Change(
      WhatIfForm asked,
      WhatIfView view,
      String rate,
      String costS,
      @Nullable InstrumentProperties what) {
    /** What differs, in one line. */
    public String differs(Say say) {
      String said =
          view.rows().stream()
              .filter(one -> !one.difference().isEmpty())
              .map(one -> say.at(one.name()) + " " + one.difference())
              .collect(Collectors.joining("; "));
      return !view.refusal().isEmpty()
          ? view.refusal()
          : said.isEmpty() ? say.at("teaching.all-alike") : said;
    }
  }

  static CaseComparison of(
      Say say, String query, WhatIf plan, double water, UnaryOperator<String> field) {
    Map<String, String> step = new HashMap<>(Map.of("step", field.apply("step")));
    WhatIfForm planned = WhatIfForm.of(say, plan, water, step, true);
    List<Change> changes = new ArrayList<>();
    for (int i = 1; i <= MOST; i++) {
      Map<String, String> sent = new LinkedHashMap<>(step);
      for (String name : FIELDS) {
        String typed = field.apply(name + i);
        if (!typed.isEmpty()) {
          sent.put(name, typed);
        }
      }
      if (sent.size() > 1) {
        changes.add(change(say, plan, WhatIfForm.of(say, plan, water, sent, false)));
      }
    }
    return new CaseComparison(query, plan.steps(), planned, changes);
  }

  private static Change change(Say say, WhatIf plan, WhatIfForm asked) {
    Varied varied = plan.ask(asked.variation());
    Varied.Figures after = varied.after();
    String rate =
        after == null ? "" : say.of(Against.time(after.cut(), varied.before().cut()).asFast());
    String cost =
        after == null
            ? ""
            : TwoDigits.of(say, varied.before().cut().costS())
                + " \u2192 "
                + TwoDigits.of(say, after.cut().costS());
    InstrumentProperties what = after == null ? null : after.cut().instrument().properties();
    return new Change(asked, WhatIfView.of(say, asked, plan), rate, cost, what);
  }
}
