package kerfwright.app.storage.cases;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.app.storage.StoredDocument;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.TrayTemplate;

/** Day lists and trays in a database. */
public final class StoredDays implements DayBooks {
  private final Sql sql;
  private final Clock clock;

  public StoredDays(Database database, Clock clock) {
    this.sql = database.sql();
    this.clock = clock;
  }

  @Override
  public DayBook read(LocalDate date) {
    return sql.one(
            StoredDays::book,
            "SELECT document FROM day_book WHERE day = ? ORDER BY version DESC LIMIT 1",
            date)
        .orElse(DayBook.empty(date));
  }

  @Override
  public DayBook read(LocalDate date, int version) {
    return sql.one(
            StoredDays::book,
            "SELECT document FROM day_book WHERE day = ? AND version = ?",
            date,
            version)
        .orElse(DayBook.empty(date));
  }

  private static DayBook book(ResultSet row) throws SQLException {
    return StoredDocument.DAY.read(row.getString("document"), DayBook.class);
  }

  @Override
  public boolean write(DayBook book, String what) {
    DayBook next = new DayBook(book.date(), book.version() + 1, book.bookings(), book.planned());
    String newest = "SELECT coalesce(max(version), 0) FROM day_book WHERE day = ?";
    // where two writers saw the same version, the key lets one of them in
    return sql.inTransaction(
        () ->
            sql.number(newest, book.date()) == book.version()
                && sql.addOnce(
                    new Row("day_book")
                        .with("day", book.date())
                        .with("version", next.version())
                        .with("at_micros", clock.instant())
                        .with("what", what)
                        .with("bookings", book.bookings().size())
                        .with("document", StoredDocument.DAY.text(next))
                        .numbered()));
  }

  @Override
  public List<LocalDate> before(LocalDate date, int most) {
    return sql.list(
        LocalDate.class,
        "SELECT d.day FROM day_book d WHERE d.day < ? AND d.bookings > 0 AND d.version"
            + " = (SELECT max(e.version) FROM day_book e WHERE e.day = d.day)"
            + " ORDER BY d.day DESC LIMIT ?",
        date,
        most);
  }

  @Override
  public List<TrayTemplate> trays() {
    return sql.list(
        row -> StoredDocument.TRAY.read(row.getString("document"), TrayTemplate.class),
        "SELECT document FROM tray_template ORDER BY name");
  }

  @Override
  public void keep(TrayTemplate tray) {
    sql.useTransaction(
        () -> {
          sql.change("DELETE FROM tray_template WHERE name = ?", tray.name());
          if (!tray.needs().isEmpty()) {
            sql.add(
                new Row("tray_template")
                    .with("name", tray.name())
                    .with("document", StoredDocument.TRAY.text(tray)));
          }
        });
  }
}
