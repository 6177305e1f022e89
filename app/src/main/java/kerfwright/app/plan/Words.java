package kerfwright.app.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.explain.OperationWords;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.StepOperation;
import kerfwright.planner.plan.TimeBand;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.SourceKey;

/** The words of a plan that page, print and command line share. */
public final class Words {
  private static final double SHOWN_ERROR_MM = 0.05;

  private Words() {}

  /** What the instrument looks like, so that a hand finds it. */
  public static String instrument(Say say, InstrumentProperties what) {
    List<String> parts = new ArrayList<>();
    GritClass grit = what.grit();
    Integer blades = what.blades();
    parts.add(gritAndKind(say, what));
    parts.add(Labels.shape(say, what.shapeName()));
    parts.add(
        say.at(
            "plan.head",
            CaseWords.size(say, what.headDiameter()),
            CaseWords.size(say, what.headLength())));
    if (blades != null) {
      parts.add(say.at(what.crossCut() ? "plan.blades-cross-cut" : "plan.blades", blades));
    }
    if (grit != null) {
      parts.add(say.at("plan.ring", Labels.ring(say, grit)));
    }
    parts.add(say.at("plan.shank", Labels.shank(say, what.shank())));
    return String.join(", ", parts);
  }

  /** In English, for what is not a page. */
  public static String instrument(InstrumentProperties what) {
    return instrument(Say.in(Language.ENGLISH), what);
  }

  /** The same in few words. */
  public static String shortInstrument(Say say, InstrumentProperties what) {
    Integer blades = what.blades();
    return gritAndKind(say, what)
        + ", "
        + Labels.shape(say, what.shapeName())
        + (blades == null ? "" : ", " + say.at("plan.blades", blades));
  }

  private static String gritAndKind(Say say, InstrumentProperties what) {
    GritClass grit = what.grit();
    String kind = Labels.kind(say, what.kind());
    return grit != null && what.kind().isDiamond()
        ? say.at("plan.grit-and-kind", Labels.grit(say, grit), kind)
        : kind;
  }

  /** The material a step cuts, as people call it. */
  public static String material(Say say, PlannedStep step) {
    return Labels.materialWithin(say, step.materialId());
  }

  /** True where the instrument of the step before stays in. */
  public static boolean sameInstrument(CutPlan plan, PlannedStep step) {
    int index = plan.steps().indexOf(step);
    return index > 0
        && plan.steps().get(index - 1).instrument().id().equals(step.instrument().id());
  }

  /** Cautions of a step; what the step before said of the same instrument is not said again. */
  public static List<Finding> cautions(CutPlan plan, PlannedStep step) {
    if (!sameInstrument(plan, step)) {
      return step.cautions();
    }
    List<Finding> before = plan.steps().get(plan.steps().indexOf(step) - 1).cautions();
    return step.cautions().stream().filter(caution -> !before.contains(caution)).toList();
  }

  /** A share of one as per cent. */
  public static String percent(Say say, Estimate share) {
    return Figures.withRange(
        say, new Estimate(share.low() * 100, share.typical() * 100, share.high() * 100), "%");
  }

  /** The number it is ordered by, where one is known. */
  public static String number(InstrumentProperties what) {
    if (what.iso() != null) {
      return "ISO " + what.iso();
    }
    return what.us() != null ? "US " + what.us() : "";
  }

  /** What the step does: "Cut a small outline through the enamel". */
  public static String operation(Say say, PlannedStep step) {
    return say.of(OperationWords.name(step.operation().row()));
  }

  /** Where the step stops: "stop at 1.6 mm (+-0.2)". */
  public static String depth(Say say, PlannedStep step) {
    Estimate to = step.toMm();
    double error = Math.max(to.high() - to.typical(), to.typical() - to.low());
    String mm = Figures.tenth(say, to.typical());
    return error < SHOWN_ERROR_MM
        ? say.at("plan.stop-at-exact", mm)
        : say.at("plan.stop-at", mm, Figures.tenth(say, error));
  }

  /** The bur on the tooth and the time in the chair, never mixed; one contact and its pause. */
  public static String howLong(Say say, PlannedStep step) {
    boolean published = step.times().chairPublished();
    return say.at(
        "plan.times",
        Figures.time(say, step.times().cutS()),
        Figures.time(say, step.times().chairS()),
        say.at(published ? "plan.times-published" : "plan.times-estimate"),
        contact(say, step));
  }

  /** The stroke, and how the hand leads it. */
  public static String stroke(Say say, PlannedStep step) {
    String stroke = Labels.stroke(say, step.stroke());
    return say.maybe(OperationWords.way(step.operation().row()))
        .map(way -> stroke + ": " + way)
        .orElse(stroke);
  }

  /** When to stop although it is not done; empty where the operation does not say. */
  public static String stopIf(Say say, PlannedStep step) {
    return say.maybe(step.operation().stopIf()).orElse("");
  }

  /** What the hand sets: a speed, or full pedal of a turbine that runs free at it. */
  public static String speed(Say say, PlannedStep step) {
    String rpm = Figures.rpm(say, step.setSpeedRpm());
    return step.atFullPedal() ? say.at("plan.full-pedal", rpm) : rpm;
  }

  /** The handpiece in two words. */
  public static String drive(Say say, PlannedStep step) {
    return say.at("plan.drive-" + step.handpiece().id());
  }

  /** How long in words alone; the figure is no better known than they say. */
  public static String duration(Say say, Estimate seconds) {
    return say.of(new TimeBand(seconds).words());
  }

  /** What the hand sets and does, in one line. */
  public static String brief(Say say, PlannedStep step) {
    return String.join(" \u00b7 ", settings(say, step));
  }

  /** The same one by one, none to be broken within. */
  public static List<String> settings(Say say, PlannedStep step) {
    List<String> all = new ArrayList<>(handled(say, step));
    if (!reach(say, step).isEmpty()) {
      all.add(reach(say, step));
    }
    return List.copyOf(all);
  }

  /** How deep the step reaches, mm; empty where it takes nothing away. */
  public static String reach(Say say, PlannedStep step) {
    double mm = step.toMm().typical();
    return mm > 0 ? Figures.tenth(say, mm) + "\u00a0mm" : "";
  }

  /** The settings and the stroke, without the depth. */
  public static List<String> handled(Say say, PlannedStep step) {
    List<String> all = new ArrayList<>();
    all.add(speed(say, step).replace(' ', '\u00a0'));
    all.add(Figures.plain(say, step.loadN().typical()) + "\u00a0N");
    all.add(
        step.coolantMlPerMin().high() == 0
            ? say.at("plan.dry")
            : Figures.plain(say, step.coolantMlPerMin().typical()) + "\u00a0mL/min");
    all.add(Labels.stroke(say, step.stroke()));
    return List.copyOf(all);
  }

  /** What to do, with how many instruments, and how long. */
  public static String verdict(Say say, CutPlan plan, int changes) {
    String cut = duration(say, plan.times().cutS());
    String chair = duration(say, plan.times().chairS());
    return say.at(
        cut.equals(chair) ? "plan.verdict-one-time" : "plan.verdict",
        plan.steps().size(),
        changes,
        cut,
        chair);
  }

  /** The standing cautions that apply, each in a few words. */
  public static String standingLine(Say say, CutPlan plan) {
    return plan.cautions().stream()
        .map(caution -> say.figures(say.at("plan.short-" + caution.code())))
        .collect(Collectors.joining(" \u00b7 "));
  }

  /** Both times of all steps, never mixed. */
  public static String allSteps(Say say, CutPlan plan) {
    return say.at(
        "plan.both-times",
        Figures.time(say, plan.times().cutS()),
        Figures.time(say, plan.times().chairS()));
  }

  /** What a whole procedure of this kind took where somebody published it. */
  public static List<String> publishedTimes(Say say, CutPlan plan) {
    return plan.published().stream()
        .map(
            time ->
                say.at(
                    "plan.published-time",
                    Figures.seconds(
                        say,
                        new Estimate(
                            time.leastS(), Math.sqrt(time.leastS() * time.mostS()), time.mostS())),
                    say.at("plan.whole-" + time.id()),
                    time.provenance().sources().get(0).key()))
        .toList();
  }

  /** When it is done, and how often it may be repeated. */
  public static String doneWhen(Say say, PlannedStep step) {
    int most = step.operation().row().repeatMost();
    String cue = say.of(step.changeCue());
    return most > 1 ? cue + " (" + say.at("plan.repeat", most) + ")" : cue;
  }

  /** What it takes of each layer. */
  public static String cuts(Say say, PlannedStep step) {
    return step.operation().layers().stream()
        .map(
            cut ->
                say.at(
                    "plan.cuts-one",
                    Labels.materialWithin(say, cut.materialId()),
                    Figures.plain(say, cut.mm3())))
        .collect(Collectors.joining(", "));
  }

  /** What stays under it; empty where nothing does. */
  public static String leaves(Say say, PlannedStep step) {
    return step.operation().remaining().stream()
        .map(left -> leaves(say, left))
        .collect(Collectors.joining("; "));
  }

  private static String leaves(Say say, StepOperation.Remaining left) {
    String material = Labels.materialWithin(say, left.materialId());
    Double least = left.leastMm();
    return least == null
        ? say.at("plan.leaves-one", material, Figures.depth(say, left.mm()))
        : say.at(
            "plan.leaves-least",
            material,
            Figures.depth(say, left.mm()),
            Figures.tenth(say, least));
  }

  /** What is done between two steps. */
  public static String cue(Say say, Cue cue) {
    String name = say.of(OperationWords.name(cue.row()));
    String text =
        cue.tool().isEmpty()
            ? say.at("plan.cue-look", name, say.of(cue.says()))
            : say.at("plan.cue-with", name, Labels.tool(say, cue.tool()), say.of(cue.says()));
    return cue.ifNeeded() ? say.at("plan.cue-if-needed", text) : text;
  }

  /** What each instrument does, by its id, in the order it is first taken. */
  public static Map<String, String> byInstrument(Say say, CutPlan plan) {
    Map<String, String> said = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      String what = step.order() + " " + operation(say, step);
      said.merge(step.instrument().id(), what, (before, now) -> before + "; " + now);
    }
    return said;
  }

  /** One contact and the pause after it. */
  public static String contact(Say say, PlannedStep step) {
    String cut = Figures.withRange(say, step.cutSeconds(), "s");
    return step.pauseSeconds().high() > 0
        ? say.at("plan.contact-pause", cut, Figures.withRange(say, step.pauseSeconds(), "s"))
        : say.at("plan.contact-lift", cut);
  }

  public static String water(Say say, Estimate mlPerMin) {
    return mlPerMin.high() == 0
        ? say.at("plan.water-none")
        : Figures.withRange(say, mlPerMin, say.at("plan.at-tip"));
  }

  /** How sure a reason is: its sources, or its standing where it has none. */
  public static String standing(Say say, Reason reason) {
    String basis = Labels.basis(say, reason.basis());
    if (reason.sources().isEmpty()) {
      return " [" + basis + "]";
    }
    String keys = reason.sources().stream().map(SourceKey::key).collect(Collectors.joining(", "));
    return reason.basis() == Basis.SEEN || reason.basis() == Basis.COMMON_PRACTICE
        ? " [" + keys + "]"
        : " [" + keys + "; " + basis + "]";
  }

  /** Keys in brackets; empty where there are none. */
  public static String sources(List<SourceKey> sources) {
    return sources.isEmpty()
        ? ""
        : sources.stream().map(SourceKey::key).collect(Collectors.joining(", ", " [", "]"));
  }

  /** What a touch tells and what the restoration is then. */
  public static String branch(Say say, Branch branch) {
    return say.at(
        "plan.branch", say.of(branch.tells()), Labels.restoration(say, branch.restoration()));
  }

  /** What a branch takes: its instruments, and how long they cut. */
  public static String branchTakes(Say say, Branch branch) {
    return say.at(
        "plan.branch-takes",
        String.join(", ", byInstrument(say, branch.plan()).keySet()),
        allSteps(say, branch.plan()));
  }
}
