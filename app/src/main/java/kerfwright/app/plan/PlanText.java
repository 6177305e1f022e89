package kerfwright.app.plan;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.explain.OperationWords;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.quantity.Finding;

/** A plan as plain text a dentist can follow, one step a block. */
public final class PlanText {
  private static final int WIDTH = 92;
  private static final int LABEL = 15;

  private final StringBuilder out = new StringBuilder();
  private final Say say;

  private PlanText(Say say) {
    this.say = say;
  }

  public static String of(Say say, CutPlan plan) {
    PlanText text = new PlanText(say);
    text.heading(plan);
    text.steps(plan);
    text.branches(plan);
    text.findings(say.at("plan.text-warnings"), plan.findings(), Finding.Severity.WARN);
    text.findings(say.at("plan.text-notes"), plan.findings(), Finding.Severity.NOTE);
    text.block(say.at("plan.text-always-mind"));
    for (Finding caution : plan.cautions()) {
      text.item(say.of(caution.message()) + Words.sources(caution.sources()));
    }
    text.blank();
    text.line(say.at("plan.figures", plan.samples(), Long.toString(plan.seed())));
    return text.out.toString();
  }

  /** Why there are none, or the steps with what they come to. */
  private void steps(CutPlan plan) {
    findings(say.at("plan.text-refused"), plan.findings(), Finding.Severity.REFUSE);
    cues(plan, 0);
    for (PlannedStep step : plan.steps()) {
      step(plan, step);
      cues(plan, step.order());
    }
    if (!plan.refused()) {
      after(plan);
      byInstrument(plan);
    }
  }

  /** How it goes on by what the first step tells. */
  private void branches(CutPlan plan) {
    if (plan.branches().isEmpty()) {
      return;
    }
    block(say.at("plan.branches"));
    for (Branch branch : plan.branches()) {
      item(Words.branch(say, branch));
    }
    for (Branch branch : plan.branches()) {
      block("== " + Words.branch(say, branch) + Words.sources(branch.sources()));
      row("plan.layers", CaseWords.layers(say, branch.plan().cutCase()), "");
      row("plan.outline-label", CaseWords.outline(say, branch.plan().cutCase().outline()), "");
      steps(branch.plan());
      findings(say.at("plan.text-warnings"), branch.plan().findings(), Finding.Severity.WARN);
    }
  }

  private void heading(CutPlan plan) {
    CutCase cutCase = plan.cutCase();
    line(
        say.at(
            "plan.text-title",
            cutCase.reference(),
            say.tooth(cutCase.tooth()),
            Labels.teeth(say),
            Labels.procedureWithin(say, cutCase.procedure()),
            Labels.pulp(say, cutCase.pulp())));
    row("plan.layers", CaseWords.layers(say, cutCase), "");
    DepthFrom chamber = plan.access();
    if (chamber != null) {
      row("plan.chamber-depth", CaseWords.chamber(say, chamber), "");
    }
    if (cutCase.stackFilledIn()) {
      labelled("", say.at("plan.text-filled-in", Words.sources(cutCase.stackSources())), "");
    }
    row("plan.outline-label", CaseWords.outline(say, cutCase.outline()), "");
    if (!CaseWords.keep(say, cutCase).isEmpty()) {
      row("plan.keep", CaseWords.keep(say, cutCase), "");
    }
    if (cutCase.finishRa() != null) {
      String goal = Figures.plain(say, cutCase.finishRa().micrometres());
      row("plan.text-finish", say.at("plan.text-finish-goal", goal), "");
    }
  }

  /** What is done between the steps. */
  private void cues(CutPlan plan, int after) {
    List<Cue> these = plan.cues().stream().filter(cue -> cue.afterStep() == after).toList();
    if (!these.isEmpty()) {
      blank();
      these.forEach(cue -> wrapped("- ", "  ", Words.cue(say, cue)));
    }
  }

  /** What each instrument does, in the order it is first taken. */
  private void byInstrument(CutPlan plan) {
    block(say.at("plan.by-instrument"));
    Words.byInstrument(say, plan)
        .forEach((id, what) -> item(say.at("plan.by-instrument-one", id, what)));
  }

  private void step(CutPlan plan, PlannedStep step) {
    block(
        step.order() + ". " + Words.operation(say, step) + " (" + Words.material(say, step) + ")");
    var what = step.instrument().properties();
    String number = Words.number(what);
    row(
        Words.sameInstrument(plan, step) ? "plan.text-keep-in" : "plan.text-take",
        step.instrument().id()
            + ": "
            + Words.instrument(say, what)
            + (number.isEmpty() ? "" : " (" + number + ")"),
        "  ");
    row("plan.text-handpiece", Labels.handpiece(say, step.handpiece()), "  ");
    row(
        "plan.speed",
        say.at(
            step.atFullPedal() ? "plan.text-speeds-turbine" : "plan.text-speeds",
            Figures.rpm(say, step.setSpeedRpm()),
            Figures.rpm(say, step.speedUnderLoadRpm()),
            Figures.withRange(say, step.rimSpeedMPerS(), "m/s")),
        "  ");
    row("plan.stroke", Words.stroke(say, step), "  ");
    row("plan.load", Figures.withRange(say, step.loadN(), "N"), "  ");
    row("plan.water", Words.water(say, step.coolantMlPerMin()), "  ");
    row("plan.how-deep", Words.depth(say, step), "  ");
    row("plan.how-long-label", Words.howLong(say, step), "  ");
    row(
        "plan.removes",
        say.at(
            "plan.text-removes",
            Words.cuts(say, step)
                + "; "
                + Figures.withRange(say, step.removalMm3PerMin(), "mm\u00b3/min"),
            Figures.withRange(say, step.raUm(), "\u00b5m")),
        "  ");
    row("plan.change-when", Words.doneWhen(say, step), "  ");
    say.maybe(step.operation().stopIf()).ifPresent(text -> row("plan.stop-if", text, "  "));
    String leaves = Words.leaves(say, step);
    if (!leaves.isEmpty()) {
      row("plan.leaves", leaves, "  ");
    }
    reasons("plan.text-why", step.reasons(), true);
    reasons("plan.against", step.reasons(), false);
    for (RunnerUp other : plan.runnersUp()) {
      if (other.step() == step.order()) {
        row(
            "plan.text-next-best",
            say.at(
                "plan.text-next-best-is",
                other.instrument().id(),
                Words.instrument(say, other.instrument().properties()),
                say.of(other.why()),
                Figures.plain(say, other.costRatio())),
            "  ");
      }
    }
    say.maybe(OperationWords.hazard(step.operation().row()))
        .ifPresent(text -> row("plan.text-take-care", text, "  "));
    for (Finding caution : Words.cautions(plan, step)) {
      row(
          "plan.text-take-care",
          say.of(caution.message()) + Words.sources(caution.sources()),
          "  ");
    }
  }

  private void reasons(String key, List<Reason> reasons, boolean supports) {
    String first = say.at(key);
    for (Reason reason : reasons) {
      if (reason.supports() == supports) {
        labelled(first, "- " + say.of(reason.message()) + Words.standing(say, reason), "  ");
        first = "";
      }
    }
  }

  private void after(CutPlan plan) {
    block(
        say.at(
            "plan.text-all-steps",
            Figures.time(say, plan.times().cutS()),
            Figures.time(say, plan.times().chairS())));
    for (String time : Words.publishedTimes(say, plan)) {
      row("plan.published-times", time, "  ");
    }
    if (plan.root() != null) {
      row("plan.root-surface", Figures.rootSurface(say, plan), "  ");
    }
    String wall = Figures.pulpWall(say, plan);
    PulpHeat pulp = plan.pulp();
    if (pulp == null) {
      row("plan.pulp", wall, "  ");
      return;
    }
    if (plan.pulpInWords()) {
      row("plan.pulp", wall, "  ");
      row("plan.dentine-left", Figures.depth(say, pulp.remainingDentineMm()), "  ");
      return;
    }
    String above = Figures.withRange(say, pulp.secondsAboveLimit(), "s");
    row("plan.pulp-wall-first", say.at("plan.text-pulp-above", wall, above), "  ");
    String dose = Figures.withRange(say, pulp.cem43Min(), "min");
    row("plan.thermal-dose", say.at("plan.text-dose", dose), "  ");
    row("plan.dentine-left", Figures.depth(say, pulp.remainingDentineMm()), "  ");
  }

  private void findings(String title, List<Finding> findings, Finding.Severity severity) {
    List<Finding> these = findings.stream().filter(f -> f.severity() == severity).toList();
    if (!these.isEmpty()) {
      block(title);
      for (Finding finding : these) {
        item(
            say.of(finding.message())
                + Words.sources(finding.sources())
                + " ("
                + finding.code()
                + ")");
      }
    }
  }

  private void block(String title) {
    blank();
    line(title);
  }

  private void blank() {
    out.append('\n');
  }

  private void item(String text) {
    wrapped("  - ", "    ", text);
  }

  private void row(String key, String text, String indent) {
    labelled(say.at(key), text, indent);
  }

  private void labelled(String label, String text, String indent) {
    String first = indent + label + " ".repeat(Math.max(1, LABEL - label.length()));
    wrapped(first, " ".repeat(first.length()), text);
  }

  private void line(String text) {
    wrapped("", "  ", text);
  }

  private void wrapped(String first, String rest, String text) {
    List<String> words = new ArrayList<>(List.of(text.strip().split("[ \\n]+")));
    StringBuilder line = new StringBuilder(first);
    boolean fresh = true;
    for (String word : words) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        out.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(rest);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }
}
