package kerfwright.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.LastResort;
import kerfwright.planner.explain.OperationWords;
import kerfwright.planner.explain.Words;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Unfilled;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.Archetypes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/** Why an operation cannot be done with the drawer as it stands, and what would help. */
final class Refusals {
  private static final int REASONS_SHOWN = 4;

  /** Reasons nobody would have taken the instrument for: said last. */
  private static final Set<String> FAR_OFF =
      Set.of(
          "polishes-only",
          "cuts-only",
          "kind-not-for-this",
          "form-not-for-this",
          "no-tip",
          "softer-than-the-work",
          "handpiece-not-for-this");

  private final CutCase cutCase;
  private final CandidateSearch search;
  private final Set<String> slow = new HashSet<>();
  private final Map<Work, Optional<Candidate>> ordinary = new LinkedHashMap<>();

  Refusals(CutCase cutCase, CandidateSearch search) {
    this.cutCase = cutCase;
    this.search = search;
  }

  /** An operation no instrument may do. */
  Unfilled unfilled(Work work) {
    return new Unfilled(work.operation(), help(work), work.operation().when().isEmpty());
  }

  /** What the plan says of it: a refusal where it cannot be left out. */
  Finding of(Found nothing, Unfilled unfilled) {
    Message name = OperationWords.name(nothing.work().operation());
    return unfilled.essential()
        ? Finding.refuse(
            "no-instrument-allowed",
            Message.of("finding.no-instrument-allowed", name, reasons(nothing), unfilled.needs()),
            SourceKey.COMMON_PRACTICE)
        : Finding.note(
            "operation-unfilled",
            Message.of("finding.operation-unfilled", name, unfilled.needs()),
            SourceKey.COMMON_PRACTICE);
  }

  private Message reasons(Found nothing) {
    Map<String, Exclusion> all = new TreeMap<>(search.excludedAlways());
    all.putAll(nothing.out());
    if (all.isEmpty()) {
      return Message.of("finding.drawer-empty");
    }
    Map<String, List<Map.Entry<String, Exclusion>>> byCode = new LinkedHashMap<>();
    all.entrySet()
        .forEach(
            out -> byCode.computeIfAbsent(out.getValue().code(), c -> new ArrayList<>()).add(out));
    List<Message> reasons =
        byCode.values().stream()
            .sorted(
                Comparator.comparing(
                        (List<Map.Entry<String, Exclusion>> outs) ->
                            FAR_OFF.contains(outs.get(0).getValue().code()))
                    .thenComparingInt(outs -> -outs.size()))
            .limit(REASONS_SHOWN)
            .map(Refusals::excluded)
            .toList();
    return Message.of("finding.excluded-all", reasons);
  }

  /** Instruments that are out for one reason: the first of them and how many more. */
  private static Message excluded(List<Map.Entry<String, Exclusion>> outs) {
    String id = outs.get(0).getKey();
    Message why = outs.get(0).getValue().message();
    int more = outs.size() - 1;
    return more > 0
        ? Message.of("finding.excluded-more", id, why, more)
        : Message.of("finding.excluded", id, why);
  }

  private Message help(Work work) {
    return better(work)
        .map(c -> Message.of("finding.add-one", Words.ordinary(c.instrument().properties())))
        .orElse(Message.of("finding.add-none"));
  }

  /** The best ordinary instrument for an operation, whether the practice has it or not. */
  Optional<Candidate> better(Work work) {
    return ordinary.computeIfAbsent(
        work,
        w ->
            new CandidateSearch(cutCase, Archetypes.fitting(w), Vetoes.all(), OwnPace.NONE)
                .on(w).candidates().stream()
                    .filter(c -> c.resort() == LastResort.NONE)
                    .min(
                        Comparator.comparingDouble(Candidate::costS).thenComparing(Candidate::id)));
  }

  /** What is planned only because nothing fitting is clean; said before all else. */
  Optional<Finding> lastResort(int step, Candidate chosen) {
    return chosen.resort() == LastResort.NONE
        ? Optional.empty()
        : Optional.of(
            chosen.resort() == LastResort.HEAD_AS_WIDE_AS_SLOT
                ? Finding.note(
                    chosen.resort().code(), said(step, chosen), SourceKey.COMMON_PRACTICE)
                : Finding.warn(
                    chosen.resort().code(), said(step, chosen), SourceKey.COMMON_PRACTICE));
  }

  private Message said(int step, Candidate chosen) {
    return Message.of(
        "finding." + chosen.resort().code(),
        chosen.id(),
        step,
        Words.material(chosen.material()),
        help(chosen.work()));
  }

  /**
   * A warning where the drawer's best is far behind an ordinary instrument it lacks, once for each
   * instrument and material.
   */
  Optional<Finding> farBehind(int step, Candidate chosen, double times) {
    String told = chosen.id() + " " + chosen.material().id();
    return better(chosen.work())
        .filter(b -> !slow.contains(told))
        .filter(b -> chosen.costS() > times * b.costS() && chosen.costS() - b.costS() > 20)
        .map(
            b -> {
              slow.add(told);
              return Finding.warn(
                  "better-instrument-missing", poor(step, chosen, b), SourceKey.COMMON_PRACTICE);
            });
  }

  private static Message poor(int step, Candidate chosen, Candidate better) {
    List<Object> values =
        new ArrayList<>(
            List.of(
                chosen.id(),
                Words.material(chosen.material()),
                Words.time(chosen.cutS()),
                step,
                Words.ordinary(better.instrument().properties()),
                Words.time(better.cutS())));
    if (chosen.lives() < 0.5) {
      return new Message("finding.better-instrument-missing", values);
    }
    values.add(Rounded.figure(chosen.lives()));
    return new Message("finding.better-instrument-missing-lives", values);
  }
}
