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
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.explain.Words;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.Archetypes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
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
    return Finding.refuse(
        "no-instrument-allowed",
        Message.of(
            "finding.no-instrument-allowed",
            Words.material(segment.material()),
            Message.of("finding.purpose-" + segment.purpose().id()),
            Rounded.places(segment.fromM() * 1e3, 1),
            Rounded.places(segment.toM() * 1e3, 1),
            reasons(nothing),
            help(segment)),
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
            .sorted(Comparator.comparingInt(outs -> -outs.size()))
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

  private Message help(Segment segment) {
    return better(segment)
        .map(c -> Message.of("finding.add-one", Words.ordinary(c.instrument().properties())))
        .orElse(Message.of("finding.add-none"));
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
    String told = chosen.id() + " " + chosen.segment().material().id();
    return better(chosen.segment())
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
                Words.material(chosen.segment().material()),
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
