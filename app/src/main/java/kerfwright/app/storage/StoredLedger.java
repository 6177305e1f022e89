package kerfwright.app.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.practice.record.Chain;

/** The chain over moves of the drawer and versions of loads, written with them. */
public record StoredLedger(Sql sql) {
  /** Everything written before there was a ledger gets its line, once. */
  void begin() {
    sql.useTransaction(
        () -> {
          StoredDrawer.holdBack(sql);
          if (end().locked().number() < 0) {
            link(sql.list(LedgerLine::entry, LedgerLine.ENTRIES + "ORDER BY id"));
            link(sql.list(LedgerLine::load, LedgerLine.LOADS + "ORDER BY id"));
          }
        });
  }

  public void entries(List<UUID> ids) {
    link(
        sql.amongst(LedgerLine::entry, LedgerLine.ENTRIES + "WHERE id IN (<in>) ORDER BY id", ids));
  }

  public void load(UUID id) {
    link(sql.list(LedgerLine::load, LedgerLine.LOADS + "WHERE id = ?", id));
  }

  private ChainEnd end() {
    return new ChainEnd(sql, "ledger_end");
  }

  private void link(List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    Chain last = end().locked();
    Chain chain = new Chain(Math.max(0, last.number()), last.hash());
    List<Row> rows = new ArrayList<>();
    for (String line : lines) {
      chain = chain.after(line);
      rows.add(
          new Row("ledger")
              .with("number", chain.number())
              .with("line", line)
              .with("hash", chain.hash()));
    }
    sql.addAll(rows);
    end().move(chain);
  }
}
