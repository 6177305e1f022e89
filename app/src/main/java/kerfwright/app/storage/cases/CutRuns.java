package kerfwright.app.storage.cases;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.chairside.RunEvent;
import kerfwright.quantity.Identified;

/** Where runs are kept. */
public final class CutRuns {
  private static final String SELECT =
      "SELECT id, version, case_reference, tooth, begun_micros, by_initials AS \"by\", sheet"
          + " FROM cut_run ";

  private final Sql sql;

  public CutRuns(Database database) {
    this.sql = database.sql();
  }

  /** Keeps a new run. */
  public void begin(CutRun run) {
    sql.add(row(run));
  }

  private static Row row(CutRun run) {
    return new Row("cut_run")
        .with("id", run.id())
        .with("version", run.version())
        .with("case_reference", run.caseReference())
        .with("tooth", run.tooth().fdi())
        .with("begun_micros", run.begun())
        .with("by_initials", run.by())
        .with("sheet", run.sheet());
  }

  public Optional<CutRun> find(UUID id) {
    return sql.one(CutRun.class, SELECT + "WHERE id = ?", id);
  }

  /**
   * Keeps a run after a swap.
   *
   * @return false where somebody else changed it meanwhile, and nothing is kept
   */
  public boolean change(CutRun next) {
    return sql.next(row(next));
  }

  /** The runs of a case on a tooth, newest first. */
  public List<CutRun> of(String caseReference, Tooth tooth) {
    return sql.list(
        CutRun.class,
        SELECT + "WHERE case_reference = ? AND tooth = ? ORDER BY id DESC",
        caseReference,
        tooth.fdi());
  }

  /** The newest runs, newest first. */
  public List<CutRun> newest(int most) {
    return sql.list(CutRun.class, SELECT + "ORDER BY id DESC LIMIT ?", most);
  }

  /**
   * Keeps what happened in a run.
   *
   * @return false where it stood there already, and nothing is kept
   */
  public boolean add(RunEvent event) {
    return sql.addOnce(
        new Row("run_event")
            .with("id", event.id())
            .with("run_id", event.run())
            .with("step", event.step())
            .with("what", event.what())
            .with("label", event.label())
            .with("depth_mm", event.depthMm())
            .with("by_initials", event.by())
            .with("at_micros", event.at())
            .numbered());
  }

  /** What happened in a run, in the order it was told. */
  public List<RunEvent> events(UUID run) {
    return sql.list(
        CutRuns::event, "SELECT * FROM run_event WHERE run_id = ? ORDER BY sequence, id", run);
  }

  private static RunEvent event(ResultSet row) throws SQLException {
    double depth = row.getDouble("depth_mm");
    return new RunEvent(
        Row.id(row, "id"),
        Row.id(row, "run_id"),
        row.getInt("step"),
        Identified.of(RunEvent.What.class, row.getString("what")).orElseThrow(),
        row.getString("label"),
        depth > 0 ? depth : null,
        row.getString("by_initials"),
        Row.time(row, "at_micros"));
  }
}
