package kerfwright.app.storage;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredTrail;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.ChainCheck;
import org.jdbi.v3.core.ConnectionFactory;
import org.jdbi.v3.core.Jdbi;

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
    try (Connection connection = DriverManager.getConnection(database.urlForReading())) {
      connection.setAutoCommit(false);
      if (database.onServer()) {
        connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
        connection.setReadOnly(true);
      }
      Chains found = within(connection);
      connection.rollback();
      return found;
    } catch (SQLException failed) {
      throw new IllegalStateException("The database cannot be read", failed);
    }
  }

  /** Within a transaction that stays open. A schema from before a chain has nothing to break. */
  static Chains within(Connection connection) throws SQLException {
    ChainCheck none = new ChainCheck(Chain.EMPTY, null);
    return new Chains(
        Seal.has(connection, "cut_record")
            ? ChainCheck.of(new StoredRecord(Jdbi.create(new Shared(connection))))
            : none,
        Seal.has(connection, "ledger") ? LedgerCheck.of(connection) : none,
        Seal.has(connection, "trail")
            ? Jdbi.create(new Shared(connection)).withHandle(StoredTrail::check)
            : none);
  }

  public boolean hold() {
    return record.holds() && ledger.holds() && trail.holds();
  }

  /** One connection lent again and again. */
  private record Shared(Connection connection) implements ConnectionFactory {
    @Override
    public Connection openConnection() {
      return connection;
    }

    @Override
    public void closeConnection(Connection lent) {
      // its owner closes it
    }
  }
}
