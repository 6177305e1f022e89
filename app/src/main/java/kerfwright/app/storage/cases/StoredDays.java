package kerfwright.app.storage.cases;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.StoredDocument;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.TrayTemplate;
import org.jdbi.v3.core.Jdbi;

/** Day lists and trays in a database. */
public final class StoredDays implements DayBooks {
  private final Jdbi jdbi;
  private final Clock clock;

  public StoredDays(Database database, Clock clock) {
    this.jdbi = database.jdbi();
    this.clock = clock;
  }

  @Override
  public DayBook read(LocalDate date) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT document FROM day_book WHERE day = :day ORDER BY version DESC LIMIT 1")
                .bind("day", date.toString())
                .map(
                    (row, context) ->
                        StoredDocument.DAY.read(row.getString("document"), DayBook.class))
                .findOne()
                .orElse(DayBook.empty(date)));
  }

  @Override
  public DayBook read(LocalDate date, int version) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT document FROM day_book WHERE day = :day AND version = :version")
                .bind("day", date.toString())
                .bind("version", version)
                .map(
                    (row, context) ->
                        StoredDocument.DAY.read(row.getString("document"), DayBook.class))
                .findOne()
                .orElse(DayBook.empty(date)));
  }

  @Override
  public boolean write(DayBook book, String what) {
    DayBook next = new DayBook(book.date(), book.version() + 1, book.bookings(), book.planned());
    return jdbi.inTransaction(
        handle -> {
          int newest =
              handle
                  .createQuery("SELECT coalesce(max(version), 0) FROM day_book WHERE day = :day")
                  .bind("day", book.date().toString())
                  .mapTo(Integer.class)
                  .one();
          if (newest != book.version()) {
            return false;
          }
          // where two writers saw the same version, the key lets one of them in
          return new Row("day_book")
              .with("day", book.date().toString())
              .with("version", next.version())
              .with("at_micros", clock.instant())
              .with("what", what)
              .with("bookings", book.bookings().size())
              .with("document", StoredDocument.DAY.text(next))
              .addNumbered(handle);
        });
  }

  @Override
  public List<LocalDate> before(LocalDate date, int most) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT d.day FROM day_book d WHERE d.day < :day AND d.bookings > 0 AND d.version"
                        + " = (SELECT max(e.version) FROM day_book e WHERE e.day = d.day)"
                        + " ORDER BY d.day DESC LIMIT :most")
                .bind("day", date.toString())
                .bind("most", most)
                .map((row, context) -> LocalDate.parse(row.getString("day")))
                .list());
  }

  @Override
  public List<TrayTemplate> trays() {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT document FROM tray_template ORDER BY name")
                .map(
                    (row, context) ->
                        StoredDocument.TRAY.read(row.getString("document"), TrayTemplate.class))
                .list());
  }

  @Override
  public void keep(TrayTemplate tray) {
    jdbi.useTransaction(
        handle -> {
          handle
              .createUpdate("DELETE FROM tray_template WHERE name = :name")
              .bind("name", tray.name())
              .execute();
          if (!tray.needs().isEmpty()) {
            handle
                .createUpdate(
                    "INSERT INTO tray_template (name, document) VALUES (:name, :document)")
                .bind("name", tray.name())
                .bind("document", StoredDocument.TRAY.text(tray))
                .execute();
          }
        });
  }
}
