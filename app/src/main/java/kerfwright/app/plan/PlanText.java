package kerfwright.app.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;
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

  private PlanText() {}

  public static String of(CutPlan plan) {
    PlanText text = new PlanText();
    text.heading(plan.cutCase());
    text.findings("REFUSED", plan.findings(), Finding.Severity.REFUSE);
    for (PlannedStep step : plan.steps()) {
      text.step(plan, step);
    }
    if (!plan.refused()) {
      text.after(plan);
    }
    text.findings("WARNINGS", plan.findings(), Finding.Severity.WARN);
    text.findings("NOTES", plan.findings(), Finding.Severity.NOTE);
    text.block("ALWAYS MIND");
    for (Finding caution : plan.cautions()) {
      text.item(caution.text() + Words.sources(caution.sources()));
    }
    text.blank();
    text.line(
        "Figures: typical (5th to 95th percentile of "
            + plan.samples()
            + " samples, seed "
            + plan.seed()
            + "). Estimates, not measurements.");
    return text.out.toString();
  }

  private void heading(CutCase cutCase) {
    line(
        "CUT PLAN "
            + cutCase.reference()
            + ": tooth "
            + cutCase.tooth().fdi()
            + " (FDI), "
            + cutCase.procedure().label().toLowerCase(Locale.ROOT)
            + ", pulp "
            + cutCase.pulp().id());
    row("Layers", Words.layers(cutCase), "");
    if (cutCase.stackFilledIn()) {
      row(
          "",
          "(usual layers filled in, the case gives none)" + Words.sources(cutCase.stackSources()),
          "");
    }
    row("Outline", Words.outline(cutCase.outline()), "");
    if (!Words.keep(cutCase).isEmpty()) {
      row("Keep", Words.keep(cutCase), "");
    }
    if (cutCase.finishRa() != null) {
      row("Finish", "Ra " + Figures.plain(cutCase.finishRa().micrometres()) + " um or better", "");
    }
  }

  private void step(CutPlan plan, PlannedStep step) {
    block(
        step.order()
            + ". "
            + Words.purpose(step.purpose()).toUpperCase(Locale.ROOT)
            + ": "
            + Words.material(plan, step));
    var what = step.instrument().properties();
    String number = Words.number(what);
    row(
        Words.sameInstrument(plan, step) ? "Keep" : "Take",
        step.instrument().id()
            + ": "
            + Words.instrument(what)
            + (number.isEmpty() ? "" : " (" + number + ")"),
        "  ");
    row("Handpiece", step.handpiece().label(), "  ");
    row(
        "Speed",
        "set "
            + Figures.rpm(step.setSpeedRpm())
            + "; under load "
            + Figures.rpm(step.speedUnderLoadRpm())
            + ", rim "
            + Figures.withRange(step.rimSpeedMPerS(), "m/s"),
        "  ");
    row("Stroke", step.stroke().label(), "  ");
    row("Load", Figures.withRange(step.loadN(), "N"), "  ");
    row("Water", Words.water(step.coolantMlPerMin()), "  ");
    row("How deep", Words.depth(step), "  ");
    row("How long", Words.howLong(step), "  ");
    row(
        "Removes",
        Figures.withRange(step.removalMm3PerMin(), "mm3/min")
            + ", leaves Ra "
            + Figures.withRange(step.raUm(), "um"),
        "  ");
    row("Change when", step.changeCue(), "  ");
    reasons("Why", step.reasons(), true);
    reasons("Against", step.reasons(), false);
    for (RunnerUp other : plan.runnersUp()) {
      if (other.step() == step.order()) {
        row(
            "Next best",
            other.instrument().id()
                + " ("
                + Words.instrument(other.instrument().properties())
                + "): "
                + other.why()
                + " Cost "
                + Figures.plain(other.costRatio())
                + " times.",
            "  ");
      }
    }
    for (Finding caution : Words.cautions(plan, step)) {
      row("Take care", caution.text() + Words.sources(caution.sources()), "  ");
    }
  }

  private void reasons(String label, List<Reason> reasons, boolean supports) {
    String first = label;
    for (Reason reason : reasons) {
      if (reason.supports() == supports) {
        String standing = Words.standing(reason);
        row(first, "- " + reason.text() + standing, "  ");
        first = "";
      }
    }
  }

  private void after(CutPlan plan) {
    block("ALL STEPS: " + Figures.time(plan.totalTimeS()));
    PulpHeat pulp = plan.pulp();
    if (pulp == null) {
      return;
    }
    boolean alive = plan.cutCase().pulp().protectsPulp();
    row(
        alive ? "Pulp wall" : "Pulp",
        Figures.pulpWall(plan)
            + (alive ? ", above it for " + Figures.withRange(pulp.secondsAboveLimit(), "s") : ""),
        "  ");
    if (!alive) {
      return;
    }
    row("Thermal dose", Figures.withRange(pulp.cem43Min(), "min") + " at 43 degC (CEM43)", "  ");
    row("Dentine left", Figures.depth(pulp.remainingDentineMm()), "  ");
  }

  private void findings(String title, List<Finding> findings, Finding.Severity severity) {
    List<Finding> these = findings.stream().filter(f -> f.severity() == severity).toList();
    if (!these.isEmpty()) {
      block(title);
      for (Finding finding : these) {
        item(finding.text() + Words.sources(finding.sources()) + " (" + finding.code() + ")");
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

  private void row(String label, String text, String indent) {
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
