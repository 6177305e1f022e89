package kerfwright.app.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.practice.record.Chain;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The chain over moves of the drawer and versions of loads, written with them. */
public final class StoredLedger {
  private static final int PORTION = 500;

  private StoredLedger() {}

  /** Everything written before there was a ledger gets its line, once. */
  static void begin(Database database) {
    database
        .jdbi()
        .useTransaction(
            handle -> {
              StoredDrawer.holdBack(handle);
              if (lockedNumber(handle) < 0) {
                try (Stream<LedgerLine> old =
                    handle
                        .createQuery(LedgerLine.ENTRIES + "ORDER BY id")
                        .map((row, context) -> LedgerLine.entry(row))
                        .stream()) {
                  link(handle, old.toList());
                }
                link(
                    handle,
                    handle
                        .createQuery(LedgerLine.LOADS + "ORDER BY id")
                        .map((row, context) -> LedgerLine.load(row))
                        .list());
              }
            });
  }

  public static void entries(Handle handle, List<UUID> ids) {
    List<LedgerLine> lines = new ArrayList<>();
    for (int from = 0; from < ids.size(); from += PORTION) {
      List<UUID> some = ids.subList(from, Math.min(ids.size(), from + PORTION));
      lines.addAll(
          handle
              .createQuery(LedgerLine.ENTRIES + "WHERE id IN (<ids>) ORDER BY id")
              .bindList("ids", some.stream().map(UUID::toString).toList())
              .map((row, context) -> LedgerLine.entry(row))
              .list());
    }
    link(handle, lines);
  }

  public static void load(Handle handle, UUID id) {
    link(
        handle,
        handle
            .createQuery(LedgerLine.LOADS + "WHERE id = :id")
            .bind("id", id.toString())
            .map((row, context) -> LedgerLine.load(row))
            .list());
  }

  private static long lockedNumber(Handle handle) {
    handle.execute("UPDATE ledger_end SET number = number");
    return handle.createQuery("SELECT number FROM ledger_end").mapTo(Long.class).one();
  }

  private static void link(Handle handle, List<LedgerLine> lines) {
    if (lines.isEmpty()) {
      return;
    }
    long number = Math.max(0, lockedNumber(handle));
    String hash = handle.createQuery("SELECT hash FROM ledger_end").mapTo(String.class).one();
    Chain chain = new Chain(number, hash);
    PreparedBatch rows =
        handle.prepareBatch(
            "INSERT INTO ledger (number, line, hash) VALUES (:number, :line, :hash)");
    for (LedgerLine line : lines) {
      chain = chain.after(line.text());
      rows.bind("number", chain.number())
          .bind("line", line.text())
          .bind("hash", chain.hash())
          .add();
    }
    rows.execute();
    handle
        .createUpdate("UPDATE ledger_end SET number = :number, hash = :hash")
        .bind("number", chain.number())
        .bind("hash", chain.hash())
        .execute();
  }
}
