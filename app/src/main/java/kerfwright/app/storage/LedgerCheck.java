package kerfwright.app.storage;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.ChainCheck.Break;
import kerfwright.practice.record.ChainCheck.Kind;
import kerfwright.practice.record.CutRecord.Stored;
import org.jspecify.annotations.Nullable;

/** Looks at every line of the ledger, and whether drawer and loads still say what it says. */
final class LedgerCheck {
  private static final int PORTION = 500;

  private final Sql sql;
  private final ChainCheck.Walk walk = new ChainCheck.Walk();

  /** By id of the load its last line, which is the one its row must say. */
  private final Map<String, Stored> loads = new HashMap<>();

  private long moves;

  private LedgerCheck(Sql sql) {
    this.sql = sql;
  }

  /** Within a transaction. */
  static ChainCheck of(Sql sql) {
    return new LedgerCheck(sql).run();
  }

  private ChainCheck run() {
    List<Stored> portion = after(0);
    while (!portion.isEmpty() && look(portion)) {
      portion = after(portion.get(portion.size() - 1).number());
    }
    ChainCheck chain = walk.upTo(Seal.of(sql).ledger());
    return chain.holds() ? new ChainCheck(chain.sound(), rows(chain.sound())) : chain;
  }

  private List<Stored> after(long number) {
    return sql.list(
        row ->
            new Stored(row.getLong("number"), row.getString("line"), row.getString("hash"), true),
        "SELECT number, line, hash FROM ledger WHERE number > ? ORDER BY number LIMIT ?",
        number,
        PORTION);
  }

  private boolean look(List<Stored> portion) {
    List<String> ids = portion.stream().map(Stored::text).map(LedgerLine::id).toList();
    Set<String> drawer =
        new HashSet<>(
            sql.amongst(LedgerLine::entry, LedgerLine.ENTRIES + "WHERE id IN (<in>)", ids));
    for (Stored line : portion) {
      boolean move = line.text().startsWith(LedgerLine.DRAWER);
      boolean found = !move || drawer.contains(line.text());
      if (!walk.at(new Stored(line.number(), line.text(), line.hash(), found))) {
        return false;
      }
      if (move) {
        moves++;
      } else {
        loads.put(LedgerLine.id(line.text()), line);
      }
    }
    return true;
  }

  /** Where a load is not as its last line says, or a row has no line. */
  private @Nullable Break rows(Chain sound) {
    Set<String> now = new HashSet<>(sql.list(LedgerLine::load, LedgerLine.LOADS));
    OptionalLong changed =
        loads.values().stream()
            .filter(line -> !now.contains(line.text()))
            .mapToLong(Stored::number)
            .min();
    if (changed.isPresent()) {
      return new Break(changed.getAsLong(), Kind.FOUND_WRONGLY);
    }
    boolean more =
        now.size() != loads.size() || sql.number("SELECT count(*) FROM stock_entry") != moves;
    return more ? new Break(sound.number() + 1, Kind.END) : null;
  }
}
