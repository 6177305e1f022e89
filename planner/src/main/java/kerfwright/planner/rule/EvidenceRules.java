package kerfwright.planner.rule;

import java.util.List;
import java.util.stream.Stream;

/** All evidence rules: facts of the trade and published results. To add one, add a method there. */
public final class EvidenceRules {
  private static final List<EvidenceRule> ALL =
      Stream.of(PracticeRules.all(), PublishedRules.all()).flatMap(List::stream).toList();

  private EvidenceRules() {}

  public static List<EvidenceRule> all() {
    return ALL;
  }
}
