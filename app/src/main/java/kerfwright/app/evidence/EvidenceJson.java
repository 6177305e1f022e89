package kerfwright.app.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import kerfwright.app.json.JsonText;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.evidence.Condition;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.catalogue.evidence.SourceRole;
import kerfwright.catalogue.evidence.SourceRoles;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Numbers;
import kerfwright.planner.evidence.Compared;
import kerfwright.planner.evidence.Conditioned;
import kerfwright.planner.evidence.Coverage;
import kerfwright.planner.evidence.EvidenceReport;
import kerfwright.planner.evidence.Summary;
import kerfwright.planner.plan.Estimate;
import org.jspecify.annotations.Nullable;

/** The comparison as JSON, contract evidence/1. */
public final class EvidenceJson {
  private EvidenceJson() {}

  public static String text(EvidenceReport report) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "evidence/1");
    json.put("samples", EvidenceReport.SAMPLES);
    json.put("heatSamples", EvidenceReport.HEAT_SAMPLES);
    json.put("seed", EvidenceReport.SEED);
    ArrayNode rows = json.putArray("rows");
    for (EvidenceRow row : Evidence.packaged().all()) {
      rows.add(row(row, report));
    }
    json.set("summary", summary(report));
    ArrayNode sources = json.putArray("sources");
    for (SourceRole role : SourceRoles.packaged().all()) {
      ObjectNode one = sources.addObject();
      one.put("key", role.source().key());
      one.put("role", role.role().id());
      one.put("reason", role.reason());
      one.put(
          "citation",
          Sources.packaged().find(role.source()).map(s -> s.citation()).orElse("not registered"));
    }
    return JsonText.of(json);
  }

  private static ObjectNode row(EvidenceRow row, EvidenceReport report) {
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.put("id", row.id());
    one.put("role", row.role().id());
    one.put("sentence", row.sentence());
    one.put("basis", row.basis().label());
    ArrayNode keys = one.putArray("sources");
    row.sources().forEach(source -> keys.add(source.key()));
    one.put("locator", row.locator());
    one.put("quantity", row.quantity());
    published(one.putObject("published"), row.numbers(), row.unit());
    ArrayNode cases = one.putArray("cases");
    report.of(row).forEach(c -> cases.add(compared(c)));
    one.put("notComputed", report.notComputed().get(row.id()));
    return one;
  }

  private static ObjectNode compared(Compared c) {
    EvidenceCase asked = c.asked();
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.put("id", asked.id());
    one.put("statement", asked.statement());
    one.put("figure", asked.figure().id());
    one.put("comparison", asked.comparison().id());
    published(one.putObject("published"), asked.published(), asked.unit());
    one.put("remark", asked.remark());
    one.set("computed", estimate(c.computed()));
    Estimate second = c.second();
    one.set("computedSecond", second == null ? null : estimate(second));
    one.put("computedUnit", EvidenceWords.unit(asked).strip());
    one.put("verdict", c.verdict().id());
    one.put("met", c.verdict().met());
    one.put("standing", c.standing().id());
    one.set("monteCarloError", JsonText.number(c.monteCarlo()));
    one.set("holdsShare", JsonText.number(c.holdsShare()));
    one.put("explanation", c.verdict().met() ? "" : asked.explanation());
    ArrayNode setUps = one.putArray("setUps");
    setUps.add(setUp(asked.first()));
    SetUp other = asked.second();
    if (other != null) {
      setUps.add(setUp(other));
    }
    return one;
  }

  private static ObjectNode setUp(SetUp setUp) {
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.put("id", setUp.id());
    one.put("label", setUp.label());
    one.put("work", setUp.work());
    one.put("cover", setUp.cover());
    one.put("handpiece", setUp.handpiece());
    ArrayNode conditions = one.putArray("conditions");
    for (Condition c : setUp.ordered()) {
      ObjectNode node = conditions.addObject();
      node.put("condition", c.kind().id());
      published(node, new Numbers(c.low(), c.typical(), c.high()), c.kind().unit());
      node.put("told", c.told());
      node.put("basis", c.basis().label());
      node.put("note", c.note());
    }
    return one;
  }

  private static ObjectNode summary(EvidenceReport report) {
    Summary s = report.summary();
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.put("validationCases", s.cases());
    one.put("met", s.met());
    one.set("share", JsonText.number((double) s.met() / Math.max(1, s.cases())));
    one.put("studies", s.byStudy().size());
    one.set("shareByStudy", JsonText.number(s.share()));
    one.put("intervals", s.intervals());
    one.put("intervalsInside", s.intervalsMet());
    one.put("directions", s.directions());
    one.put("directionsRight", s.directionsMet());
    one.put("frozen", s.frozen());
    one.put("frozenMet", s.frozenMet());
    one.put("frozenMetWithinOneLaboratory", s.frozenMetInOneLaboratory());
    one.set("medianFactorOfRates", JsonText.number(s.medianFactor()));
    one.set("medianWidthOfPulpRiseK", JsonText.number(s.medianKelvin()));
    one.set("monteCarloError", JsonText.number(s.monteCarlo()));
    ArrayNode coverage = one.putArray("coverage");
    report.coverage().forEach(c -> coverage.add(coverage(c)));
    ArrayNode conditioned = one.putArray("conditioned");
    for (Conditioned c : report.conditioned()) {
      ObjectNode node = conditioned.addObject();
      node.put("family", c.family().id());
      node.put("studies", c.studies());
      node.put("figures", c.figures());
      node.put("covered", c.covered());
      number(node, "medianWidth", c.medianWidth());
    }
    ArrayNode words = one.putArray("words");
    EvidenceWords.closing(Say.in(Language.ENGLISH), report).forEach(words::add);
    return one;
  }

  private static ObjectNode coverage(Coverage c) {
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.put("family", c.id());
    one.put("studies", c.studies());
    one.put("figures", c.figures());
    number(one, "coverage90", c.share());
    number(one, "medianWidth", c.medianWidth());
    one.put("covered", c.covered());
    one.set("binomial", estimate(c.binomial()));
    number(one, "intervalScore", c.score());
    number(one, "intervalScoreOfMean", c.meanScore());
    one.put("testable", c.testable());
    one.put("holds", c.testable() && c.holds());
    return one;
  }

  private static void number(ObjectNode one, String name, double value) {
    one.set(name, Double.isFinite(value) ? JsonText.number(value) : null);
  }

  private static ObjectNode estimate(Estimate e) {
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.set("low", JsonText.number(e.low()));
    one.set("typical", JsonText.number(e.typical()));
    one.set("high", JsonText.number(e.high()));
    return one;
  }

  private static void published(ObjectNode one, Numbers numbers, String unit) {
    put(one, "low", numbers.low());
    put(one, "typical", numbers.typical());
    put(one, "high", numbers.high());
    one.put("unit", unit);
  }

  private static void put(ObjectNode one, String name, @Nullable Double value) {
    one.set(name, value == null ? null : JsonText.number(value));
  }
}
