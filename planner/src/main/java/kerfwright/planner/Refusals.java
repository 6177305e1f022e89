package kerfwright.planner;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.explain.Words;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.Archetypes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
import kerfwright.quantity.Finding;
import kerfwright.quantity.SourceKey;

/** Why a stretch cannot be cut with the drawer as it stands, and what would help. */
final class Refusals {
  private static final int REASONS_SHOWN = 4;

  private final CandidateSearch search;
  private final CandidateSearch archetypes;
  private final Set<String> slow = new HashSet<>();

  Refusals(CutCase cutCase, CandidateSearch search, double depthM) {
    this.search = search;
    this.archetypes =
        new CandidateSearch(cutCase, Archetypes.fitting(cutCase.outline()), depthM, Vetoes.all());
  }

  /** The refusal of a stretch no instrument may cut. */
  Finding of(Found nothing) {
    Segment segment = nothing.segment();
    String where =
        String.format(
            Locale.ROOT,
            "No clean instrument is allowed for %s (%s, %.1f to %.1f mm)",
            segment.material().inSentence(),
            segment.purpose().id(),
            segment.fromM() * 1e3,
            segment.toM() * 1e3);
    return Finding.refuse(
        "no-instrument-allowed",
        where + ": " + reasons(nothing) + " " + help(segment),
        SourceKey.COMMON_PRACTICE);
  }

  private String reasons(Found nothing) {
    Map<String, Exclusion> all = new TreeMap<>(search.excludedAlways());
    all.putAll(nothing.out());
    if (all.isEmpty()) {
      return "the drawer is empty.";
    }
    Map<String, Integer> count = new LinkedHashMap<>();
    Map<String, String> example = new LinkedHashMap<>();
    all.forEach(
        (id, exclusion) -> {
          count.merge(exclusion.code(), 1, Integer::sum);
          example.putIfAbsent(exclusion.code(), id + " " + exclusion.text());
        });
    StringBuilder words = new StringBuilder();
    count.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder()))
        .limit(REASONS_SHOWN)
        .forEach(
            e -> {
              int more = e.getValue() - 1;
              words
                  .append(words.isEmpty() ? "" : "; ")
                  .append(example.get(e.getKey()))
                  .append(more > 0 ? " (and " + more + " more)" : "");
            });
    return words.append('.').toString();
  }

  private String help(Segment segment) {
    return better(segment)
        .map(c -> "Add a " + c.id() + ".")
        .orElse(
            "No ordinary instrument would be allowed either: change outline, handpiece or water.");
  }

  /** The best ordinary instrument for a stretch, whether the practice has it or not. */
  Optional<Candidate> better(Segment segment) {
    return archetypes.on(segment).candidates().stream()
        .min(Comparator.comparingDouble(Candidate::costS).thenComparing(Candidate::id));
  }

  /**
   * A warning where the drawer's best is far behind an ordinary instrument it lacks, once for each
   * instrument and material.
   */
  Optional<Finding> farBehind(int step, Candidate chosen, double times) {
    String told = chosen.id() + " through " + chosen.segment().material().inSentence();
    return better(chosen.segment())
        .filter(b -> !slow.contains(told))
        .filter(b -> chosen.costS() > times * b.costS() && chosen.costS() - b.costS() > 20)
        .map(
            b -> {
              slow.add(told);
              return Finding.warn(
                  "better-instrument-missing",
                  String.format(
                      Locale.ROOT,
                      "%s is the best in the drawer but poor: %s of cutting in step %d%s. A %s would cut"
                          + " for %s: add one.",
                      told,
                      Words.time(chosen.cutS()),
                      step,
                      chosen.lives() < 0.5
                          ? ""
                          : " and " + Words.figure(chosen.lives()) + " instruments",
                      b.id(),
                      Words.time(b.cutS())),
                  SourceKey.COMMON_PRACTICE);
            });
  }
}
