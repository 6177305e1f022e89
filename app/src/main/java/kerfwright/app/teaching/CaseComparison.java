package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import kerfwright.app.drawing.TwoDigits;
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
    for (int i = 0; i < changes.size(); i++) {
      WhatIfForm asked = changes.get(i).asked();
      String n = String.valueOf(i + 1);
      out.append("&instrument").append(n).append('=').append(Addresses.encoded(asked.instrument()));
      out.append("&rpm").append(n).append('=').append(asked.rpm());
      out.append("&load").append(n).append('=').append(Scene.plain(asked.load()));
      out.append("&stroke").append(n).append('=').append(asked.stroke().id());
      out.append("&water").append(n).append('=').append(asked.water());
    }
    return out.toString();
  }

  /** The difference each change makes, in one sentence. */
  public List<String> sentences(Say say) {
    List<String> said = new ArrayList<>();
    for (int i = 0; i < changes.size(); i++) {
      Change change = changes.get(i);
      said.add(
          ChangeWords.sentence(
              say, Side.letter(i + 1), change.asked().instrument(), change.varied()));
    }
    return said;
  }

  /** Drawings and figures of the plan and its changes. */
  public Side side(Say say, CutPlan plan) {
    List<SideBySide.Column> drawn = new ArrayList<>();
    drawn.add(drawn(0, before));
    for (int i = 0; i < changes.size(); i++) {
      Candidate cut = changes.get(i).cut();
      if (cut != null) {
        drawn.add(drawn(i + 1, cut));
      }
    }
    SideBySide sections = SideBySide.atStep(say, "section", plan, planned.step(), drawn);
    List<Side.Column> columns = new ArrayList<>();
    int next = 0;
    columns.add(column(say, 0, before, planned, sections.columns().get(next++)));
    for (int i = 0; i < changes.size(); i++) {
      Candidate cut = changes.get(i).cut();
      String section = cut == null ? "" : sections.columns().get(next++);
      columns.add(column(say, i + 1, cut, changes.get(i).asked(), section));
    }
    return new Side(
        sections.key(), say.at("teaching.section-step", planned.step()), columns, rows(say));
  }

  private static SideBySide.Column drawn(int column, Candidate cut) {
    return new SideBySide.Column(
        Side.letter(column), cut.id(), cut.instrument().properties(), cut.stroke());
  }

  private static Side.Column column(
      Say say, int number, @Nullable Candidate cut, WhatIfForm asked, String section) {
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
    List<Side.Row> rows = new ArrayList<>();
    rows.add(row(say.at("teaching.row-rate"), c -> TwoDigits.of(say, rate(c))));
    rows.add(
        row(
            say.at("teaching.row-ratio"),
            c -> c == before ? "1" : say.of(Against.time(c, before).asFast())));
    rows.add(row(say.at("teaching.row-load"), c -> TwoDigits.of(say, c.loadN())));
    rows.add(row(say.at("teaching.row-rim"), c -> TwoDigits.of(say, c.cut().tangentialN())));
    rows.add(
        row(say.at("teaching.row-hand"), c -> Comparison.wall(say, ChangeWords.alongTravelN(c))));
    rows.add(row(say.at("teaching.row-heat"), c -> TwoDigits.of(say, c.cut().powerW())));
    rows.add(view(say, "whatif.pulp"));
    rows.add(view(say, "whatif.roughness"));
    rows.add(row(say.at("teaching.row-damage"), c -> TwoDigits.of(say, c.damageM() * 1e6)));
    rows.add(view(say, "whatif.life"));
    rows.add(view(say, "whatif.step-time"));
    rows.add(view(say, "whatif.total-time"));
    rows.add(row(say.at("teaching.row-step-cost"), c -> TwoDigits.of(say, c.costS())));
    return rows;
  }

  private static double rate(Candidate c) {
    return c.volumeM3() / Math.max(1e-9, c.cutS()) * 60e9;
  }

  private Side.Row row(String head, Function<Candidate, String> figure) {
    List<String> cells = new ArrayList<>();
    cells.add(figure.apply(before));
    for (Change change : changes) {
      Candidate cut = change.cut();
      cells.add(cut == null ? NONE : figure.apply(cut));
    }
    return new Side.Row(head, cells);
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
