package kerfwright.practice.record;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
          if (unknownPiece(report)) {
            return Logged.refused(Logged.Refusal.UNKNOWN_INSTRUMENT);
          }
          Writing writing = new Writing(report.caseReference());
          CutUse use = writing.use(report, null);
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
          if (right != null && unknownPiece(right)) {
            return Logged.refused(Logged.Refusal.UNKNOWN_INSTRUMENT);
          }
          Writing writing = new Writing(old.use().caseReference());
          writing.takeBack(old);
          CutUse use = right == null ? old.use() : writing.use(right, old);
          return Logged.as(
              record.append(
                  new Statement(id, use, correction, writing.remarks), writing.at, writing.lines),
              false);
        });
  }

  /** True where the drawer does not know what was used, or what it turned in as a handpiece. */
  private boolean unknownPiece(UseReport report) {
    UUID handpiece = report.handpiece();
    return drawer.find(report.item()).isEmpty()
        || (handpiece != null && drawer.find(handpiece).filter(UsedAs::isHandpiece).isEmpty());
  }

  /** A practice that has named nobody yet takes all initials. */
  private boolean unknown(String initials) {
    List<Person> people = Person.all(settings.read());
    String capitals = initials.toUpperCase(Locale.ROOT);
    return !people.isEmpty() && people.stream().noneMatch(one -> one.initials().equals(capitals));
  }

  private interface Attempt {
    Logged run() throws DrawerConflict, CutRecord.CorrectedMeanwhile;
  }

  /**
   * A use is a fact, whatever else happens to the instrument: it waits for its turn, and is kept.
   */
  private Logged inTurn(Attempt attempt) {
    return drawer.inTurn(
        () -> {
          try {
            return attempt.run();
          } catch (DrawerConflict | CutRecord.CorrectedMeanwhile never) {
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
    private final Map<UUID, StockItem> changed = new HashMap<>();

    Writing(String note) {
      this.note = note;
    }

    private void line(@Nullable StockItem before, StockItem after) {
      lines.add(
          new DrawerEntry(
              ids.next(), batch, at, DrawerEntry.What.RECORDED, note, before, after, null));
      changed.put(after.id(), after);
    }

    /** The item as it is after the lines so far. */
    private StockItem now(UUID item) {
      StockItem after = changed.get(item);
      return after == null ? drawer.find(item).orElseThrow() : after;
    }

    CutUse use(UseReport report, @Nullable RecordEntry instead) {
      UsedInstrument instrument =
          count(report.item(), report.cut().mm3ByMaterial(), report, instead, remarks);
      OriginOfUse origin = OriginOfUse.of(report, report.item(), origins, clock.getZone());
      remarks.addAll(origin.remarks());
      remarks.addAll(UsedAs.remarks(now(instrument.id()), report, at));
      CutUse.Piece handpiece = handpiece(report, instead);
      boolean asBefore = instead != null && instead.use().by().equals(report.by());
      if (!asBefore && unknown(report.by())) {
        remarks.add(Remark.of(Remark.Kind.UNKNOWN_PERSON, report.by()));
      }
      return new CutUse(
          report.caseReference(),
          report.tooth(),
          report.step(),
          instrument,
          handpiece,
          origin.origin(),
          report.cut(),
          report.by(),
          report.at());
    }

    private CutUse.@Nullable Piece handpiece(UseReport report, @Nullable RecordEntry instead) {
      UUID item = report.handpiece();
      if (item == null) {
        return null;
      }
      List<Remark> its = new ArrayList<>();
      UsedInstrument piece = count(item, Map.of(), report, instead, its);
      OriginOfUse origin = OriginOfUse.ofHandpiece(report, item, origins, clock.getZone());
      its.addAll(origin.remarks());
      its.forEach(one -> remarks.add(one.ofHandpiece()));
      return new CutUse.Piece(piece, origin.origin());
    }

    /** Counts the use for a piece and moves it on; of a lot one piece is given off. */
    private UsedInstrument count(
        UUID id,
        Map<String, Double> mm3,
        UseReport report,
        @Nullable RecordEntry instead,
        List<Remark> told) {
      StockItem item = now(id);
      PieceOfLot found = PieceOfLot.of(item, report, record, drawer, ids.next());
      StockItem rest = found.rest();
      StockItem piece = rest == null ? now(found.piece().id()) : found.piece();
      UUID known = rest == null ? piece.id() : item.id();
      UseOfItem judged = judged(piece, known, report.caseReference(), report.at(), instead);
      StockItem after = judged.after(mm3);
      if (rest == null) {
        line(piece, after);
      } else {
        line(item, rest);
        line(null, after.asNew());
      }
      told.addAll(judged.remarks());
      return UsedAs.instrument(piece, found.pieceOf());
    }

    /** Takes counts and volumes of that entry back. */
    void takeBack(RecordEntry old) {
      CutUse use = old.use();
      takeBack(use.instrument().id(), use.cut().mm3ByMaterial(), old);
      CutUse.Piece handpiece = use.handpiece();
      if (handpiece != null) {
        takeBack(handpiece.used().id(), Map.of(), old);
      }
    }

    private void takeBack(UUID id, Map<String, Double> mm3, RecordEntry old) {
      StockItem item = now(id);
      line(item, judged(item, id, old.use().caseReference(), old.use().at(), old).takenBack(mm3));
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
      List<RecordEntry> holding =
          record.holding(all).stream().filter(one -> !one.equals(but)).toList();
      return new UseOfItem(item, history, round, holding, caseReference, used);
    }
  }
}
