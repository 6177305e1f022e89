package kerfwright.app.learning;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.planner.casework.OwnPace;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.StockItem;
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
  private @Nullable Known known;
  private Logged logged = new Logged(-1, Instant.EPOCH, List.of());

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

  /**
   * What the log teaches up to an entry, newest first.
   *
   * @param end number of the last entry looked at
   */
  private record Logged(long end, Instant since, List<LoggedCut> cuts) {}

  /** Worked out anew only when something was logged, measured or reset, in whichever process. */
  public synchronized Known known() {
    Known last = known;
    long end = record.end().number();
    SettingValues set = settings.read();
    if (last != null && last.end() == end && last.version() == set.version()) {
      return last;
    }
    Instant since = since();
    List<LoggedCut> cuts = new ArrayList<>(ownCuts.against(set));
    cuts.addAll(ofTheLog(end, since));
    Map<OwnPace.Where, Integer> counts =
        new TreeMap<>(
            Comparator.comparing(OwnPace.Where::materialId).thenComparing(OwnPace.Where::kind));
    cuts.stream()
        .filter(LoggedCut::believable)
        .forEach(cut -> counts.merge(cut.where(), 1, Integer::sum));
    int believed = counts.values().stream().mapToInt(Integer::intValue).sum();
    Known now =
        new Known(
            end, set.version(), since, PaceLearning.from(cuts), counts, cuts.size() - believed);
    known = now;
    return now;
  }

  /** Only what is new is read, unless a correction is among it: it may change any cut before. */
  private List<LoggedCut> ofTheLog(long end, Instant since) {
    Logged before = logged;
    boolean goesOn = before.since().equals(since) && before.end() >= 0 && before.end() <= end;
    Optional<List<RecordEntry>> newer =
        goesOn ? PastUses.entriesAfter(record, since, before.end()) : Optional.empty();
    List<RecordEntry> entries = newer.orElseGet(() -> PastUses.entries(record, since));
    Map<UUID, List<DrawerEntry>> histories = new HashMap<>();
    List<LoggedCut> cuts = new ArrayList<>();
    entries.forEach(entry -> cut(entry.use(), histories).ifPresent(cuts::add));
    if (newer.isPresent()) {
      cuts.addAll(before.cuts());
    }
    long through = entries.isEmpty() ? end : Math.max(end, entries.get(0).number());
    logged =
        new Logged(
            through, since, List.copyOf(cuts.subList(0, Math.min(cuts.size(), PastUses.MOST))));
    return logged.cuts();
  }

  private Optional<LoggedCut> cut(CutUse use, Map<UUID, List<DrawerEntry>> histories) {
    PlanStep step = use.step();
    Double taken = use.cut().totalSeconds();
    if (step == null || taken == null || taken <= 0) {
      return Optional.empty();
    }
    UUID id = use.instrument().id();
    PlannedSteps.Planned plan = planned.find(step).orElse(null);
    StockItem item = plan == null ? null : drawer.find(id).orElse(null);
    if (plan == null || item == null || !item.isRotary()) {
      return Optional.empty();
    }
    OwnPace.Where where = new OwnPace.Where(plan.materialId(), item.properties().kind());
    double lives = OwnPace.livesOfUses(usesBefore(id, use.at(), histories));
    return Optional.of(new LoggedCut(where, plan.literatureS(), taken, lives));
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
