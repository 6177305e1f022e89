package kerfwright.practice.restock;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;

/** The uses the cut record holds to be true: what was corrected counts as corrected. */
public final class PastUses {
  private static final int PORTION = 500;

  /** More are not looked at: the newest tell how the practice works now. */
  public static final int MOST = 50_000;

  private PastUses() {}

  /** What makes several entries one use: the same piece goes on within a case. */
  private record OneUse(UUID piece, String caseKey, LocalDate day) {}

  /**
   * Those at or after a moment, newest first.
   *
   * @param procedure the procedure of a step of a plan, where it is known
   */
  public static List<PastUse> since(
      CutRecord record, Instant from, ZoneId zone, Function<PlanStep, Optional<String>> procedure) {
    Map<OneUse, PastUse> uses = new LinkedHashMap<>();
    for (RecordEntry entry : entries(record, from)) {
      PastUse use = use(entry, zone, procedure);
      String caseKey = use.caseReference().toLowerCase(Locale.ROOT);
      uses.merge(new OneUse(entry.use().instrument().id(), caseKey, use.day()), use, PastUse::with);
    }
    return List.copyOf(uses.values());
  }

  /** The entries that stand, newest first. */
  public static List<RecordEntry> entries(CutRecord record, Instant from) {
    List<RecordEntry> standing = new ArrayList<>();
    Long older = null;
    for (int seen = 0; seen < MOST; seen += PORTION) {
      List<RecordEntry> some =
          record.list(new RecordQuery(null, null, null, null, from, null, older, PORTION));
      if (some.isEmpty()) {
        break;
      }
      standing.addAll(record.holding(some));
      older = some.get(some.size() - 1).number();
    }
    return standing;
  }

  /** Those after an entry, newest first; empty where they correct something of before. */
  public static Optional<List<RecordEntry>> entriesAfter(
      CutRecord record, Instant from, long number) {
    List<RecordEntry> newer = new ArrayList<>();
    Long older = null;
    while (newer.size() < MOST) {
      for (RecordEntry entry :
          record.list(new RecordQuery(null, null, null, null, from, null, older, PORTION))) {
        if (entry.number() <= number) {
          return Optional.of(newer);
        }
        if (entry.correction() != null) {
          return Optional.empty();
        }
        newer.add(entry);
      }
      Long last = newer.isEmpty() ? null : newer.get(newer.size() - 1).number();
      if (last == null || last.equals(older)) {
        return Optional.of(newer);
      }
      older = last;
    }
    return Optional.empty();
  }

  private static PastUse use(
      RecordEntry entry, ZoneId zone, Function<PlanStep, Optional<String>> procedure) {
    CutUse use = entry.use();
    UUID lot = use.instrument().pieceOf();
    PlanStep step = use.step();
    return new PastUse(
        lot == null ? use.instrument().id() : lot,
        LocalDate.ofInstant(use.at(), zone),
        use.caseReference(),
        step == null ? "" : procedure.apply(step).orElse(""),
        use.cut().mm3ByMaterial());
  }
}
