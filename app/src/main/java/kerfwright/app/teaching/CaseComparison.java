package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.strip.AtWork;
import kerfwright.app.drawing.strip.SideBySide;
import kerfwright.app.plan.Figures;
import kerfwright.app.plan.WhatIfForm;
import kerfwright.app.plan.WhatIfView;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.Varied;
import kerfwright.planner.WhatIf;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.uncertainty.Against;
import org.jspecify.annotations.Nullable;

/**
 * A plan with one to three changes to one of its steps, side by side.
 *
 * @param query the case
 * @param steps how many steps the plan has
 * @param planned the step as planned
 * @param before what the step does as planned
 * @param changes what was changed
 */
public record CaseComparison(
    String query, int steps, WhatIfForm planned, Candidate before, List<Change> changes) {
  static final int MOST = 3;
  private static final List<String> FIELDS =
      List.of("instrument", "rpm", "load", "stroke", "water");
  private static final String NONE = "\u2013";

  public CaseComparison {
    changes = List.copyOf(changes);
  }

  /**
   * One change.
   *
   * @param asked what was asked
   * @param view its figures beside the plan's
   * @param varied what it comes to
   */
  public record Change(WhatIfForm asked, WhatIfView view, Varied varied) {
    /** What the step does with it, null where it is refused. */
    @Nullable Candidate cut() {
      Varied.Figures after = varied.after();
      return after == null ? null : after.cut();
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
        WhatIfForm asked = WhatIfForm.of(say, plan, water, sent, false);
        changes.add(
            new Change(asked, WhatIfView.of(say, asked, plan), plan.ask(asked.variation())));
      }
    }
    Candidate before = plan.planned(planned.step());
    return new CaseComparison(query, plan.steps(), planned, before, changes);
  }

  /** The same address again. */
  public String address() {
    StringBuilder out = new StringBuilder("/teach/compare/case?of=");
    out.append(Addresses.encoded(query)).append("&step=").append(planned.step());
    for (int i = 1; i <= changes.size(); i++) {
      WhatIfForm asked = asked(i);
      out.append(
          String.format(
              Locale.ROOT,
              "&instrument%1$d=%2$s&rpm%1$d=%3$d&load%1$d=%4$s&stroke%1$d=%5$s&water%1$d=%6$d",
              i,
              Addresses.encoded(asked.instrument()),
              asked.rpm(),
              Scene.plain(asked.load()),
              asked.stroke().id(),
              asked.water()));
    }
    return out.toString();
  }

  /** The difference each change makes, in one sentence. */
  public List<String> sentences(Say say) {
    return IntStream.rangeClosed(1, changes.size())
        .mapToObj(
            i ->
                ChangeWords.sentence(
                    say, Side.letter(i), asked(i).instrument(), changes.get(i - 1).varied()))
        .toList();
  }

  /** What is asked of a column; the plan's own is the first. */
  private WhatIfForm asked(int column) {
    return column == 0 ? planned : changes.get(column - 1).asked();
  }

  /** What the step does in a column, null where the change is refused. */
  private @Nullable Candidate cut(int column) {
    return column == 0 ? before : changes.get(column - 1).cut();
  }

  /** Drawings and figures of the plan and its changes. */
  public Side side(Say say, CutPlan plan) {
    AtWork place = AtWork.atStep(plan, planned.step());
    List<AtWork> works = new ArrayList<>();
    for (int i = 0; i <= changes.size(); i++) {
      Candidate cut = cut(i);
      if (cut != null) {
        works.add(
            place.with(Side.letter(i), cut.id(), cut.instrument().properties(), cut.stroke()));
      }
    }
    SideBySide sections = SideBySide.atStep(say, "section", plan, works);
    Iterator<String> drawn = sections.columns().iterator();
    List<Side.Column> columns = new ArrayList<>();
    for (int i = 0; i <= changes.size(); i++) {
      columns.add(column(say, i, cut(i) == null ? "" : drawn.next()));
    }
    return new Side(
        sections.key(), say.at("teaching.section-step", planned.step()), columns, rows(say));
  }

  private Side.Column column(Say say, int number, String section) {
    WhatIfForm asked = asked(number);
    Candidate cut = cut(number);
    String name =
        cut == null
            ? asked.instrument()
            : cut.id() + ", " + Words.shortInstrument(say, cut.instrument().properties());
    String set =
        String.join(
            "; ",
            Figures.rpm(say, asked.rpm()),
            Figures.plain(say, asked.load()) + "\u00a0N",
            asked.water() + "\u00a0mL/min",
            Labels.stroke(say, asked.stroke()));
    return new Side.Column(
        Side.letter(number),
        number == 0 ? say.at("teaching.planned", name) : name,
        set,
        cut == null ? null : cut.instrument().properties(),
        section);
  }

  private List<Side.Row> rows(Say say) {
    return List.of(
        figures(say, "rate", CaseComparison::rate),
        row(say, "ratio", c -> c == before ? "1" : say.of(Against.time(c, before).asFast())),
        figures(say, "load", Candidate::loadN),
        figures(say, "rim", c -> c.cut().tangentialN()),
        row(say, "hand", c -> Comparison.wall(say, ChangeWords.alongTravelN(c))),
        figures(say, "heat", c -> c.cut().powerW()),
        view(say, "whatif.pulp"),
        view(say, "whatif.roughness"),
        figures(say, "damage", c -> c.damageM() * 1e6),
        view(say, "whatif.life"),
        view(say, "whatif.step-time"),
        view(say, "whatif.total-time"),
        figures(say, "step-cost", Candidate::costS));
  }

  private static double rate(Candidate c) {
    return c.volumeM3() / Math.max(1e-9, c.cutS()) * 60e9;
  }

  private Side.Row figures(Say say, String name, ToDoubleFunction<Candidate> figure) {
    return row(say, name, c -> TwoDigits.of(say, figure.applyAsDouble(c)));
  }

  private Side.Row row(Say say, String name, Function<Candidate, String> words) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i <= changes.size(); i++) {
      Candidate cut = cut(i);
      cells.add(cut == null ? NONE : words.apply(cut));
    }
    return new Side.Row(say.at("teaching.row-" + name), cells);
  }

  /** A row of figures with their ranges, as a change at the plan itself shows it. */
  private Side.Row view(Say say, String name) {
    List<String> cells = new ArrayList<>();
    for (Change change : changes) {
      WhatIfView.Row one =
          change.view().rows().stream()
              .filter(r -> r.name().equals(name))
              .findFirst()
              .orElseThrow();
      if (cells.isEmpty()) {
        cells.add(one.before());
      }
      cells.add((one.after() + " " + one.difference()).strip());
    }
    return new Side.Row(say.at(name), cells);
  }
}
