package kerfwright.app.storage.cases;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.chairside.CutRuns;
import kerfwright.practice.chairside.RunEvent;
import kerfwright.quantity.Identified;
import org.jdbi.v3.core.Jdbi;

/** The runs in a database. */
public final class StoredRuns implements CutRuns {
  private static final String COLUMNS =
      "SELECT id, version, case_reference, tooth, begun_micros, by_initials, sheet FROM cut_run ";

  private final Jdbi jdbi;

  public StoredRuns(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public void begin(CutRun run) {
    jdbi.useHandle(
        new Row("cut_run")
                .with("id", run.id())
                .with("version", run.version())
                .with("case_reference", run.caseReference())
                .with("tooth", run.tooth().fdi())
                .with("begun_micros", run.begun())
                .with("by_initials", run.by())
                .with("sheet", run.sheet())
            ::add);
  }

  @Override
  public Optional<CutRun> find(UUID id) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(COLUMNS + "WHERE id = :id")
                .bind("id", id.toString())
                .map((row, context) -> run(row))
                .findOne());
  }

  @Override
  public boolean change(CutRun next) {
    return jdbi.inTransaction(
        handle ->
            handle
                    .createUpdate(
                        "UPDATE cut_run SET version = :version, sheet = :sheet"
                            + " WHERE id = :id AND version = :before")
                    .bind("version", next.version())
                    .bind("sheet", next.sheet())
                    .bind("id", next.id().toString())
                    .bind("before", next.version() - 1)
                    .execute()
                == 1);
  }

  @Override
  public List<CutRun> of(String caseReference, Tooth tooth) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    COLUMNS
                        + "WHERE case_reference = :reference AND tooth = :tooth"
                        + " ORDER BY id DESC")
                .bind("reference", caseReference)
                .bind("tooth", tooth.fdi())
                .map((row, context) -> run(row))
                .list());
  }

  @Override
  public List<CutRun> newest(int most) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(COLUMNS + "ORDER BY id DESC LIMIT :most")
                .bind("most", most)
                .map((row, context) -> run(row))
                .list());
  }

  @Override
  public boolean add(RunEvent event) {
    return jdbi.withHandle(
        new Row("run_event")
                .with("id", event.id())
                .with("run_id", event.run())
                .with("step", event.step())
                .with("what", event.what().id())
                .with("label", event.label())
                .with("depth_mm", event.depthMm())
                .with("by_initials", event.by())
                .with("at_micros", event.at())
            ::addNumbered);
  }

  @Override
  public List<RunEvent> events(UUID run) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    "SELECT id, run_id, step, what, label, depth_mm, by_initials, at_micros FROM"
                        + " run_event WHERE run_id = :run ORDER BY sequence, id")
                .bind("run", run.toString())
                .map((row, context) -> event(row))
                .list());
  }

  private static RunEvent event(ResultSet row) throws SQLException {
    double depth = row.getDouble("depth_mm");
    return new RunEvent(
        UUID.fromString(row.getString("id")),
        UUID.fromString(row.getString("run_id")),
        row.getInt("step"),
        Identified.of(RunEvent.What.class, row.getString("what")).orElseThrow(),
        row.getString("label"),
        depth > 0 ? depth : null,
        row.getString("by_initials"),
        Row.instant(row.getLong("at_micros")));
  }

  private static CutRun run(ResultSet row) throws SQLException {
    return new CutRun(
        UUID.fromString(row.getString("id")),
        row.getInt("version"),
        row.getString("case_reference"),
        new Tooth(row.getInt("tooth")),
        Row.instant(row.getLong("begun_micros")),
        row.getString("by_initials"),
        row.getString("sheet"));
  }
}
