package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.FinishGoal;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** Finishing and polishing of what a case leaves, where a roughness is wanted. */
public final class Finishing {
  private static final double THINNEST_M = 1e-6;

  private final CutCase cutCase;
  private final Segments segments;
  private final CandidateSearch search;
  private final @Nullable Length goal;
  private @Nullable FinishChain chain;
  private final Map<Segment, List<Candidate>> rivals = new HashMap<>();

  private final Set<String> out;

  private Finishing(CutCase cutCase, Segments segments, CandidateSearch search, Set<String> out) {
    this.out = out;
    this.cutCase = cutCase;
    this.segments = segments;
    this.search = search;
    this.goal = FinishGoal.of(cutCase);
  }

  /** Works out what can finish the surface of a case; instruments by id may be left out. */
  public static Finishing of(
      CutCase cutCase, Segments segments, CandidateSearch search, Set<String> out) {
    Finishing finishing = new Finishing(cutCase, segments, search, out);
    if (finishing.goal != null) {
      finishing.chain = new FinishChain(finishing.finishers(), finishing.goal.metres());
    }
    return finishing;
  }

  /** What it costs to finish what a last cut leaves, seconds. */
  public double afterwardsS(Candidate last) {
    return chain == null ? 0 : chain.costS(last);
  }

  /** A dentine wall left rougher than wanted has to be finished too, seconds. */
  public double wallsS(Candidate c) {
    String id = c.segment().material().id();
    boolean wall =
        cutCase.outline().shape().walled()
            && !c.segment().punch()
            && (id.equals("dentine") || id.equals("carious-dentine"));
    return wall ? afterwardsS(c) : 0;
  }

  /** A warning where the drawer cannot reach the roughness wanted. */
  public Optional<Finding> outOfReach(Candidate last) {
    if (goal == null || chain == null || chain.reachable(last)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn(
            "finish-not-reached",
            Message.of(
                "finding.finish-not-reached",
                Rounded.places(goal.micrometres(), 2),
                Rounded.places(last.raM() * 1e6, 2)),
            new SourceKey("yin-2003")));
  }

  /** The passes after a last cut, in order. */
  public List<Candidate> after(Candidate last) {
    return chain == null ? List.of() : chain.after(last).stream().map(this::deepened).toList();
  }

  /** A pass that follows a candidate with an instrument somebody chose. */
  public Optional<Candidate> pass(Candidate last, Predicate<Candidate> wanted) {
    return Stream.of(Purpose.FINISH, Purpose.POLISH)
        .map(purpose -> finishSegment(purpose, Math.max(THINNEST_M, last.damageM())))
        .flatMap(
            real ->
                rivals.computeIfAbsent(real, s -> search.on(s).candidates()).stream()
                    .filter(wanted))
        .findFirst();
  }

  /** The candidates each pass was chosen from. */
  public Map<Segment, List<Candidate>> rivals() {
    return Map.copyOf(rivals);
  }

  /** Candidates for finishing and polishing the floor, worked out for a thin pass. */
  private List<Candidate> finishers() {
    List<Candidate> all = new ArrayList<>();
    for (Purpose purpose : List.of(Purpose.FINISH, Purpose.POLISH)) {
      search.on(finishSegment(purpose, FinishChain.PASS_M)).candidates().stream()
          .filter(c -> !out.contains(c.id()))
          .forEach(all::add);
    }
    return all;
  }

  private Segment finishSegment(Purpose purpose, double depthM) {
    Segment last = segments.cuts().get(segments.cuts().size() - 1);
    Layer floor = segments.floor();
    boolean keepsFloor = floor != null && last.wholeBelow();
    Material material = floor != null && keepsFloor ? floor.material() : last.material();
    int layer = keepsFloor ? last.layer() + 1 : last.layer();
    boolean walled = cutCase.outline().shape().walled();
    double height =
        walled ? Math.max(0.3e-3, segments.depthM()) : cutCase.outline().width().metres();
    double area = cutCase.outline().areaM2() + (walled ? wallAreaM2() : 0);
    return new Segment(
        layer,
        material,
        purpose,
        false,
        segments.depthM(),
        segments.depthM() + depthM,
        area,
        height,
        material,
        last.marginM(),
        false);
  }

  private double wallAreaM2() {
    double around =
        2 * 0.85 * (cutCase.outline().length().metres() + cutCase.outline().width().metres());
    return around * segments.depthM();
  }

  private Candidate deepened(FinishChain.Pass pass) {
    Candidate c = pass.candidate();
    Segment real = finishSegment(c.segment().purpose(), pass.depthM());
    List<Candidate> there = rivals.computeIfAbsent(real, s -> search.on(s).candidates());
    return there.stream()
        .filter(o -> o.id().equals(c.id()) && o.handpiece().id().equals(c.handpiece().id()))
        .findFirst()
        .orElse(c);
  }
}
