package kerfwright.app.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import kerfwright.app.words.Say;
import kerfwright.catalogue.source.Source;
import kerfwright.catalogue.source.Sources;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Reason;
import kerfwright.quantity.Finding;
import kerfwright.quantity.SourceKey;

/** Every source a plan names, with what it is. */
public final class PlanSources {
  private PlanSources() {}

  /** Citations by key, in the order of the keys. */
  public static Map<String, String> of(Say say, CutPlan plan) {
    TreeSet<SourceKey> keys = new TreeSet<>(plan.cutCase().stackSources());
    add(keys, plan.findings());
    add(keys, plan.cautions());
    for (PlannedStep step : plan.steps()) {
      add(keys, step.cautions());
      for (Reason reason : step.reasons()) {
        keys.addAll(reason.sources());
      }
    }
    Map<String, String> citations = new LinkedHashMap<>();
    for (SourceKey key : keys) {
      citations.put(key.key(), citation(say, key));
    }
    return citations;
  }

  private static void add(TreeSet<SourceKey> keys, List<Finding> findings) {
    findings.forEach(finding -> keys.addAll(finding.sources()));
  }

  /** What a source is, and how it was read. */
  public static String citation(Say say, SourceKey key) {
    if (key.equals(SourceKey.COMMON_PRACTICE)) {
      return say.at("plan.source-common-practice");
    }
    Source source = Sources.packaged().find(key).orElse(null);
    if (source == null) {
      return say.at("plan.source-unknown");
    }
    return say.at("plan.source-known-by", source.citation(), source.seen());
  }
}
