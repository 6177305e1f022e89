package kerfwright.app.storage;

import java.util.List;
import kerfwright.practice.record.Chain;

/** The one row that names the last link of a chain, and holds those who write to it in line. */
public record ChainEnd(Sql sql, String table) {
  /** Where there is not one row, which no chain fits. */
  static final Chain NONE = new Chain(-1, "");

  public Chain read() {
    List<Chain> ends = sql.list(Chain.class, "SELECT number, hash FROM " + table);
    return ends.size() == 1 ? ends.get(0) : NONE;
  }

  /** Holds it until the transaction is over: other writers wait here. */
  public Chain locked() {
    sql.change("UPDATE " + table + " SET number = number");
    Chain end = read();
    if (end.equals(NONE)) {
      throw new IllegalStateException("The end of a chain was changed past the program: " + table);
    }
    return end;
  }

  public void move(Chain end) {
    sql.change("UPDATE " + table + " SET number = ?, hash = ?", end.number(), end.hash());
  }
}
