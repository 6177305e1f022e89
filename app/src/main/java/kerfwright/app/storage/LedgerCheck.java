package kerfwright.app.storage;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.ChainCheck.Kind;
import org.jspecify.annotations.Nullable;

/** Looks at every line of the ledger, and whether drawer and loads still say what it says. */
final class LedgerCheck {
  private static final int PORTION = 500;

  private final Connection connection;
  private final Map<String, Line> loads = new HashMap<>();
  private Chain sound = Chain.EMPTY;
  private long moves;
  private ChainCheck.@Nullable Break broken;

  private record Line(long number, LedgerLine line) {}

  private LedgerCheck(Connection connection) {
    this.connection = connection;
  }

  /** Within the transaction of that connection. */
  static ChainCheck of(Connection connection) throws SQLException {
    return new LedgerCheck(connection).run();
  }

  private ChainCheck run() throws SQLException {
    List<Line> portion = portion();
    while (!portion.isEmpty() && broken == null) {
      compare(portion);
      portion = broken == null ? portion() : List.of();
    }
    if (broken == null && !sound.equals(Seal.of(connection).ledger())) {
      broken = new ChainCheck.Break(sound.number() + 1, Kind.END);
    }
    if (broken == null) {
      compareLoads();
    }
    if (broken == null && count("stock_entry") != moves) {
      broken = new ChainCheck.Break(sound.number() + 1, Kind.END);
    }
    return new ChainCheck(sound, broken);
  }

  private List<Line> portion() throws SQLException {
    List<Line> lines = new ArrayList<>();
    try (Statement ask = connection.createStatement();
        ResultSet row =
            ask.executeQuery(
                "SELECT number, line, hash FROM ledger WHERE number > "
                    + sound.number()
                    + " ORDER BY number LIMIT "
                    + PORTION)) {
      while (row.next() && broken == null) {
        long number = row.getLong("number");
        String text = row.getString("line");
        Chain next = sound.after(text);
        if (number != next.number()) {
          broken = new ChainCheck.Break(next.number(), Kind.MISSING);
        } else if (!next.hash().equals(row.getString("hash"))) {
          broken = new ChainCheck.Break(number, Kind.CHANGED);
        } else {
          sound = next;
          lines.add(new Line(number, LedgerLine.of(text)));
        }
      }
    }
    return lines;
  }

  private void compare(List<Line> lines) throws SQLException {
    Map<String, Line> drawer = new HashMap<>();
    for (Line one : lines) {
      (one.line().kind() == LedgerLine.Kind.DRAWER ? drawer : loads).put(one.line().id(), one);
    }
    moves += drawer.size();
    if (drawer.isEmpty()) {
      return;
    }
    String places = String.join(", ", java.util.Collections.nCopies(drawer.size(), "?"));
    Map<String, Line> left = new HashMap<>(drawer);
    try (PreparedStatement ask =
        connection.prepareStatement(LedgerLine.ENTRIES + "WHERE id IN (" + places + ")")) {
      int place = 1;
      for (String id : drawer.keySet()) {
        ask.setString(place++, id);
      }
      try (ResultSet row = ask.executeQuery()) {
        while (row.next()) {
          LedgerLine now = LedgerLine.entry(row);
          Line known = drawer.get(now.id());
          if (known != null && now.equals(known.line())) {
            left.remove(now.id());
          }
        }
      }
    }
    first(left);
  }

  private void compareLoads() throws SQLException {
    Map<String, Line> left = new HashMap<>(loads);
    try (Statement ask = connection.createStatement();
        ResultSet row = ask.executeQuery(LedgerLine.LOADS)) {
      while (row.next()) {
        LedgerLine now = LedgerLine.load(row);
        Line known = loads.get(now.id());
        if (known == null) {
          broken = new ChainCheck.Break(sound.number() + 1, Kind.END);
        } else if (now.equals(known.line())) {
          left.remove(now.id());
        }
      }
    }
    first(left);
  }

  /** The first line that its row does not say. */
  private void first(Map<String, Line> left) {
    left.values().stream()
        .mapToLong(Line::number)
        .min()
        .ifPresent(number -> broken = new ChainCheck.Break(number, Kind.FOUND_WRONGLY));
  }

  private long count(String table) throws SQLException {
    try (Statement ask = connection.createStatement();
        ResultSet row = ask.executeQuery("SELECT count(*) FROM " + table)) {
      return row.next() ? row.getLong(1) : 0;
    }
  }
}
