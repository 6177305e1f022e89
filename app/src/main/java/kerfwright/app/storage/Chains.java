package kerfwright.app.storage;

import java.util.function.Function;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.Trail;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.ChainCheck;

/**
 * What a look at the chains found.
 *
 * @param record the cut record
 * @param ledger moves of the drawer and loads
 * @param trail who saw, exported and changed what
 */
public record Chains(ChainCheck record, ChainCheck ledger, ChainCheck trail) {
  /** Looks at a database that may be in use, and writes nothing. */
  public static Chains of(Database database) {
    try (Snapshot now = Snapshot.of(database)) {
      return now.chains();
    }
  }

  /** Within a transaction. */
  static Chains of(Sql sql) {
    return new Chains(
        checked(sql, "cut_record", one -> ChainCheck.of(new StoredRecord(one))),
        checked(sql, "ledger", LedgerCheck::of),
        checked(sql, "trail", one -> new Trail(one).check()));
  }

  /** A schema from before a chain has nothing to break. */
  private static ChainCheck checked(Sql sql, String table, Function<Sql, ChainCheck> check) {
    return sql.has(table) ? check.apply(sql) : new ChainCheck(Chain.EMPTY, null);
  }

  public boolean hold() {
    return record.holds() && ledger.holds() && trail.holds();
  }
}
