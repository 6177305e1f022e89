package kerfwright.app.learning;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.planner.casework.OwnPace;
import kerfwright.practice.chairside.CutRuns;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.learning.LoggedCut;
import kerfwright.practice.learning.Narrowed;
import kerfwright.practice.learning.PaceLearning;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.restock.PastUses;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import org.jspecify.annotations.Nullable;

/** Collects what was logged against what was planned, and remembers what it teaches. */
public final class LearningService implements Supplier<OwnPace> {
  /** Setting: only what was cut after this moment teaches. */
  static final String SINCE = "learning.since";

  /** Setting: "no" where plans stay with the literature. */
  static final String USE = "learning.use";

  private final CutRecord record;
  private final PlannedSteps planned;
  private final Drawer drawer;
  private final Settings settings;
  private final OwnCuts ownCuts;
  private volatile @Nullable Known known;

  public LearningService(CutRecord record, CutRuns runs, Drawer drawer, Settings settings) {
    this.record = record;
    this.planned = new PlannedSteps(runs);
    this.drawer = drawer;
    this.settings = settings;
    this.ownCuts = new OwnCuts(settings, drawer);
  }

  /**
   * What is known.
   *
   * @param end last entry of the record it rests on
   * @param version of the settings, which hold the measured cuts
   * @param since what was logged before does not teach
   * @param pace what was learned
   * @param counts believable cuts by material and kind
   * @param setAside cuts that are hard to believe
   */
  public record Known(
      long end,
      int version,
      Instant since,
      OwnPace pace,
      Map<OwnPace.Where, Integer> counts,
      int setAside) {
    /** The bands before and after. */
    public List<Narrowed> narrowed() {
      return Narrowed.of(pace, counts);
    }
  }

  /** The measured cuts. */
  public OwnCuts ownCuts() {
    return ownCuts;
  }

  /** What plans are made with. */
  @Override
  public OwnPace get() {
    return used() ? known().pace() : OwnPace.NONE;
  }

  boolean used() {
    return !settings.read().text(USE, "").equals("no");
  }

  Instant since() {
    try {
      return Instant.parse(settings.read().text(SINCE, Instant.EPOCH.toString()));
    } catch (DateTimeException unreadable) {
      return Instant.EPOCH;
    }
  }

  /** Worked out anew only when something was logged, measured or reset, in whichever process. */
  public Known known() {
    long end = record.end().number();
    SettingValues set = settings.read();
    Known last = known;
    if (last == null || last.end() != end || last.version() != set.version()) {
      last = learn(end, set);
      known = last;
    }
    return last;
  }

  private Known learn(long end, SettingValues set) {
    Instant since = since();
    List<LoggedCut> cuts = new ArrayList<>(ownCuts.against(set));
    Map<UUID, List<DrawerEntry>> histories = new HashMap<>();
    for (RecordEntry entry : PastUses.entries(record, since)) {
      cut(entry.use(), histories).ifPresent(cuts::add);
    }
    Map<OwnPace.Where, Integer> counts =
        new TreeMap<>(
            java.util.Comparator.comparing(OwnPace.Where::materialId)
                .thenComparing(OwnPace.Where::kind));
    cuts.stream()
        .filter(LoggedCut::believable)
        .forEach(cut -> counts.merge(cut.where(), 1, Integer::sum));
    int believed = counts.values().stream().mapToInt(Integer::intValue).sum();
    return new Known(
        end, set.version(), since, PaceLearning.from(cuts), counts, cuts.size() - believed);
  }

  private Optional<LoggedCut> cut(CutUse use, Map<UUID, List<DrawerEntry>> histories) {
    PlanStep step = use.step();
    Double taken = use.cut().totalSeconds();
    if (step == null || taken == null || taken <= 0) {
      return Optional.empty();
    }
    UUID id = use.instrument().id();
    return planned
        .find(step)
        .flatMap(
            plan ->
                drawer
                    .find(id)
                    .filter(item -> item.isRotary())
                    .map(
                        item ->
                            new LoggedCut(
                                new OwnPace.Where(plan.materialId(), item.properties().kind()),
                                plan.literatureS(),
                                taken,
                                OwnPace.livesOfUses(usesBefore(id, use.at(), histories)))));
  }

  private int usesBefore(UUID item, Instant at, Map<UUID, List<DrawerEntry>> histories) {
    int uses = 0;
    for (DrawerEntry line : histories.computeIfAbsent(item, drawer::history)) {
      if (line.at().isBefore(at)) {
        uses = line.after().uses();
      }
    }
    return uses;
  }
}
