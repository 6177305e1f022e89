package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import kerfwright.app.chairside.QueryFields;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.input.BadInput;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.plan.PlanSources;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.caution.CautionCondition;
import kerfwright.catalogue.caution.Cautions;
import kerfwright.catalogue.claim.Claim;
import kerfwright.catalogue.claim.Claims;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.claim.ClaimModels;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;

/**
 * Sheets by the address of what they are about: a lecture, a comparison, a claim, a number, a case.
 */
record Sheets(CasePlans plans) {
  private static final String SHOW = "/teach/show/";

  /** Empty where the address names nothing there is, or a case whose plan is refused. */
  Optional<Sheet> of(Say say, String subject) {
    int mark = subject.indexOf('?');
    String path = mark < 0 ? subject : subject.substring(0, mark);
    Map<String, List<String>> fields = QueryFields.of(mark < 0 ? "" : subject.substring(mark + 1));
    UnaryOperator<String> field = name -> fields.getOrDefault(name, List.of("")).get(0);
    return switch (path) {
      case "/teach/compare" -> Optional.of(onALayer(say, Comparison.of(field)));
      case "/teach/compare/case" -> inACase(say, field);
      case "/teach/claims" -> Claims.packaged().find(field.apply("id")).map(one -> claim(say, one));
      case "/teach/number" -> Optional.of(number(say, NumberLesson.of(say, field)));
      case "/plan" -> plan(say, fields);
      default ->
          path.startsWith(SHOW)
              ? Identified.of(Topic.class, path.substring(SHOW.length()))
                  .map(topic -> lecture(say, Lectures.of(say, topic, Scene.of(topic, field))))
              : Optional.empty();
    };
  }

  /** The cautions of whatever is taught from the models. */
  static List<Finding> cautions() {
    return Cautions.packaged()
        .findings(EnumSet.of(CautionCondition.TEACHING, CautionCondition.MODEL_OUTPUT));
  }

  private static Sheet lecture(Say say, Lecture lecture) {
    String topic = lecture.topic().id();
    List<Sheet.Picture> pictures =
        lecture.frames().stream()
            .map(one -> new Sheet.Picture(one.svg(), one.title() + ". " + one.says()))
            .toList();
    return new Sheet(
        lecture.topic().title(say),
        lecture.rows().isEmpty() ? pictures : pictures.subList(0, 1),
        lecture.rows(),
        List.of(
            lecture.said(),
            say.at("teaching.computed") + " " + say.at("teaching.computed-" + topic),
            say.at("teaching.drawn") + " " + say.at("teaching.drawn-" + topic)),
        lecture.topic().sources(),
        cautions());
  }

  private static Sheet compared(
      Say say,
      String title,
      Side side,
      List<String> says,
      List<SourceKey> sources,
      List<Finding> cautions) {
    List<List<String>> table = new ArrayList<>();
    List<String> heads = new ArrayList<>(List.of(""));
    List<Sheet.Picture> pictures = new ArrayList<>();
    pictures.add(new Sheet.Picture(side.key(), ""));
    for (Side.Column one : side.columns()) {
      heads.add(one.letter() + " " + one.name() + "; " + one.set());
      if (!one.section().isEmpty()) {
        pictures.add(new Sheet.Picture(one.section(), ""));
      }
    }
    table.add(heads);
    for (Side.Row row : side.rows()) {
      List<String> line = new ArrayList<>(List.of(row.head()));
      line.addAll(row.cells());
      table.add(line);
    }
    return new Sheet(title, pictures, table, says, sources, cautions);
  }

  private static Sheet onALayer(Say say, Comparison comparison) {
    return compared(
        say,
        say.at("teaching.compare-on", Labels.materialWithin(say, comparison.bench().layer().id())),
        comparison.side(say),
        List.of(comparison.sentence(say), comparison.taken(say)),
        Comparison.sources(),
        cautions());
  }

  private Optional<Sheet> inACase(Say say, UnaryOperator<String> field) {
    String query = field.apply("of");
    try {
      CutCase cutCase = plans.read(QueryFields.of(query));
      return plans
          .whatIf(cutCase)
          .map(
              plan -> {
                double water = cutCase.coolant().millilitresPerMinute();
                CutPlan planned = plans.plan(cutCase);
                CaseComparison comparison = CaseComparison.of(say, query, plan, water, field);
                return compared(
                    say,
                    heading(say, planned),
                    comparison.side(say, planned),
                    comparison.sentences(say),
                    sources(say, planned),
                    planned.cautions());
              });
    } catch (BadInput noLongerRead) {
      return Optional.empty();
    }
  }

  private static List<SourceKey> sources(Say say, CutPlan plan) {
    return PlanSources.of(say, plan).keySet().stream().map(SourceKey::new).toList();
  }

  private static String heading(Say say, CutPlan plan) {
    return say.at(
        "plan.heading",
        say.tooth(plan.cutCase().tooth()),
        Labels.procedureWithin(say, plan.cutCase().procedure()));
  }

  private static Sheet claim(Say say, Claim claim) {
    List<String> says = new ArrayList<>();
    says.add(say.of(ClaimModels.of(claim.id()).words()));
    says.add(say.at("teaching.standing-" + claim.standing().id()) + ".");
    Set<SourceKey> sources = new LinkedHashSet<>(claim.sources());
    for (EvidenceRow row : claim.supporting()) {
      says.add(say.at("teaching.finding-for", row.sentence()));
      sources.addAll(row.sources());
    }
    for (EvidenceRow row : claim.opposing()) {
      says.add(say.at("teaching.finding-against", row.sentence()));
      sources.addAll(row.sources());
    }
    List<Sheet.Picture> pictures =
        Identified.of(Topic.class, claim.shownBy())
            .map(topic -> List.of(new Sheet.Picture(topic.picture(say), topic.title(say))))
            .orElse(List.of());
    return new Sheet(
        say.at("claim." + claim.id()), pictures, List.of(), says, List.copyOf(sources), cautions());
  }

  private static Sheet number(Say say, NumberLesson lesson) {
    List<List<String>> table = new ArrayList<>();
    table.add(List.of(say.at("teaching.col-digits"), say.at("teaching.col-about"), ""));
    lesson.parts().forEach(one -> table.add(List.of(one.digits(), one.role(), one.meaning())));
    Set<SourceKey> sources = new LinkedHashSet<>();
    var explained = lesson.answer().explained();
    if (explained != null) {
      explained.groups().stream()
          .filter(group -> group.provenance() != null)
          .forEach(group -> sources.addAll(group.provenance().sources()));
    }
    return new Sheet(
        lesson.answer().iso(),
        lesson.answer().drawings().stream().map(svg -> new Sheet.Picture(svg, "")).toList(),
        table,
        List.of(),
        List.copyOf(sources),
        cautions());
  }

  private Optional<Sheet> plan(Say say, Map<String, List<String>> fields) {
    try {
      CutPlan plan = plans.plan(plans.read(fields));
      return plan.refused() ? Optional.empty() : Optional.of(planned(say, plan));
    } catch (BadInput noLongerRead) {
      return Optional.empty();
    }
  }

  private Sheet planned(Say say, CutPlan plan) {
    LayerStrip strip = PlanDrawings.strip(say, plan, LayerStrip.Place.CARD);
    List<Sheet.Picture> pictures = new ArrayList<>();
    pictures.add(new Sheet.Picture(strip.key(), ""));
    strip.stages().forEach(one -> pictures.add(new Sheet.Picture(one.svg(), "")));
    List<List<String>> table = new ArrayList<>();
    table.add(
        List.of(
            "",
            say.at("teaching.col-step"),
            say.at("teaching.col-set"),
            say.at("teaching.col-until")));
    for (PlannedStep step : plan.steps()) {
      table.add(
          List.of(
              String.valueOf(step.order()),
              Words.operation(say, step)
                  + " ("
                  + Words.shortInstrument(say, step.instrument().properties())
                  + ")",
              Words.brief(say, step),
              Words.doneWhen(say, step)));
    }
    return new Sheet(
        heading(say, plan),
        pictures,
        table,
        List.of(Words.verdict(say, plan, strip.stages().size())),
        sources(say, plan),
        plan.cautions());
  }
}
