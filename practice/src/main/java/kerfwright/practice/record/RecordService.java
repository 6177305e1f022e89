package kerfwright.practice.record;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.Settings;
import org.jspecify.annotations.Nullable;

/**
 * Writes uses and their corrections down, and moves the instruments with them. A use that should
 * not have been is written too, with its remarks.
 */
public final class RecordService {
  private final CutRecord record;
  private final Drawer drawer;
  private final Origins origins;
  private final Settings settings;
  private final TimeOrderedIds ids;
  private final Clock clock;

  public RecordService(
      CutRecord record,
      Drawer drawer,
      Origins origins,
      Settings settings,
      TimeOrderedIds ids,
      Clock clock) {
    this.record = record;
    this.drawer = drawer;
    this.origins = origins;
    this.settings = settings;
    this.ids = ids;
    this.clock = clock;
  }

  public CutRecord record() {
    return record;
  }

  /** A fresh id, for a report about to be made here. */
  public UUID newId() {
    return ids.next();
  }

  /** Writes a use down, once however often it is sent, and moves the instrument on. */
  public Logged log(UseReport report) {
    return inTurn(
        () -> {
          Optional<RecordEntry> before = record.find(report.id());
          if (before.isPresent()) {
            return report.saidBy(before.get())
                ? Logged.as(before.get(), true)
                : Logged.refused(Logged.Refusal.ID_TAKEN);
          }
          Optional<StockItem> item = drawer.find(report.item());
          if (item.isEmpty()) {
            return Logged.refused(Logged.Refusal.UNKNOWN_INSTRUMENT);
          }
          Writing writing = new Writing(report.caseReference());
          CutUse use = writing.use(item.get(), report, null);
          RecordEntry entry =
              record.append(
                  new Statement(report.id(), use, null, writing.remarks),
                  writing.at,
                  writing.lines);
          return report.saidBy(entry)
              ? Logged.as(entry, false)
              : Logged.refused(Logged.Refusal.ID_TAKEN);
        });
  }

  /**
   * Says that an entry was wrong and what is right. Counts and volumes of the instruments follow;
   * none becomes ready by a correction.
   *
   * @param right what did take place, with the id of the new entry
   */
  public Logged correct(UUID wrong, UseReport right, String by, String reason) {
    return correct(wrong, right.id(), right, new Correction(wrong, false, by, reason));
  }

  /** Says that the use of an entry did not take place. */
  public Logged strike(UUID wrong, UUID id, String by, String reason) {
    return correct(wrong, id, null, new Correction(wrong, true, by, reason));
  }

  private Logged correct(UUID wrong, UUID id, @Nullable UseReport right, Correction correction) {
    return inTurn(
        () -> {
          Optional<RecordEntry> known = record.find(id);
          if (known.isPresent()) {
            return correction.equals(known.get().correction())
                ? Logged.as(known.get(), true)
                : Logged.refused(Logged.Refusal.ID_TAKEN);
          }
          RecordEntry old = record.find(wrong).orElse(null);
          if (old == null || old.strikes()) {
            return Logged.refused(
                old == null ? Logged.Refusal.UNKNOWN_ENTRY : Logged.Refusal.STRUCK);
          }
          if (!record.correctionsOf(List.of(wrong)).isEmpty()) {
            return Logged.refused(Logged.Refusal.CORRECTED_ALREADY);
          }
          if (unknown(correction.by())) {
            return Logged.refused(Logged.Refusal.UNKNOWN_PERSON);
          }
          Optional<StockItem> named =
              drawer.find(right == null ? old.use().instrument().id() : right.item());
          if (named.isEmpty()) {
            return Logged.refused(Logged.Refusal.UNKNOWN_INSTRUMENT);
          }
          Writing writing = new Writing(old.use().caseReference());
          StockItem back = writing.takeBack(old);
          CutUse use = old.use();
          if (right != null) {
            StockItem item = named.get().id().equals(back.id()) ? back : named.get();
            use = writing.use(item, right, old);
          }
          return Logged.as(
              record.append(
                  new Statement(id, use, correction, writing.remarks), writing.at, writing.lines),
              false);
        });
  }

  /** A practice that has named nobody yet takes all initials. */
  private boolean unknown(String initials) {
    List<Person> people = Person.all(settings.read());
    String capitals = initials.toUpperCase(Locale.ROOT);
    return !people.isEmpty() && people.stream().noneMatch(one -> one.initials().equals(capitals));
  }

  private interface Attempt {
    Logged run() throws DrawerConflict, CorrectedMeanwhile;
  }

  /**
   * A use is a fact, whatever else happens to the instrument: it waits for its turn, and is kept.
   */
  private Logged inTurn(Attempt attempt) {
    return drawer.inTurn(
        () -> {
          try {
            return attempt.run();
          } catch (DrawerConflict | CorrectedMeanwhile never) {
            throw new IllegalStateException("Somebody wrote out of turn", never);
          }
        });
  }

  /** One entry on its way, with the lines of the drawer it brings. */
  private final class Writing {
    // as fine as every database keeps it
    private final Instant at = clock.instant().truncatedTo(ChronoUnit.MICROS);
    private final UUID batch = ids.next();
    private final String note;
    private final List<DrawerEntry> lines = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();

    Writing(String note) {
      this.note = note;
    }

    private void line(@Nullable StockItem before, StockItem after) {
      lines.add(
          new DrawerEntry(
              ids.next(), batch, at, DrawerEntry.What.RECORDED, note, before, after, null));
    }

    CutUse use(StockItem item, UseReport report, @Nullable RecordEntry instead) {
      PieceOfLot found = PieceOfLot.of(item, report, record, drawer, ids.next());
      StockItem piece = found.piece();
      StockItem rest = found.rest();
      UUID known = rest == null ? piece.id() : item.id();
      UseOfItem judged = judged(piece, known, report.caseReference(), report.at(), instead);
      StockItem after = judged.after(report.cut().mm3ByMaterial());
      if (rest == null) {
        line(piece, after);
      } else {
        line(item, rest);
        line(null, after.asNew());
      }
      OriginOfUse origin = OriginOfUse.of(report, item.id(), origins, clock.getZone());
      remarks.addAll(judged.remarks());
      remarks.addAll(origin.remarks());
      remarks.addAll(UsedAs.remarks(piece, report, at));
      boolean asBefore = instead != null && instead.use().by().equals(report.by());
      if (!asBefore && unknown(report.by())) {
        remarks.add(Remark.of(Remark.Kind.UNKNOWN_PERSON, report.by()));
      }
      return new CutUse(
          report.caseReference(),
          report.tooth(),
          report.step(),
          UsedAs.instrument(piece, found.pieceOf()),
          origin.origin(),
          report.cut(),
          report.by(),
          report.at());
    }

    /** Takes counts and volumes of that entry back; gives the item as it is then. */
    StockItem takeBack(RecordEntry old) {
      CutUse use = old.use();
      StockItem item = drawer.find(use.instrument().id()).orElseThrow();
      StockItem back =
          judged(item, item.id(), use.caseReference(), use.at(), old)
              .takenBack(use.cut().mm3ByMaterial());
      line(item, back);
      return back;
    }

    /**
     * @param known the item whose history tells where it was
     * @param but an entry that does not hold any more
     */
    private UseOfItem judged(
        StockItem item, UUID known, String caseReference, Instant used, @Nullable RecordEntry but) {
      List<DrawerEntry> history = drawer.history(known);
      ItemCycle round = ItemCycle.around(used, history);
      List<RecordEntry> all =
          record.list(
              new RecordQuery(null, null, item.id(), null, round.from(), round.until(), null, 500));
      Set<UUID> corrected =
          record.correctionsOf(all.stream().map(RecordEntry::id).toList()).keySet();
      List<RecordEntry> holding =
          all.stream()
              .filter(one -> !one.strikes() && !corrected.contains(one.id()) && !one.equals(but))
              .toList();
      return new UseOfItem(item, history, round, holding, caseReference, used);
    }
  }
}
