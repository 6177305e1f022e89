package kerfwright.app.storage.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.practice.people.ProgramToken;
import kerfwright.practice.people.ProgramTokens;
import kerfwright.quantity.Identified;
import org.jdbi.v3.core.Jdbi;

/** The tokens of programs in a database. */
public final class StoredTokens implements ProgramTokens {
  private final Jdbi jdbi;

  public StoredTokens(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public List<ProgramToken> all() {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM program_token ORDER BY id DESC")
                .map((row, context) -> token(row))
                .list());
  }

  @Override
  public Optional<ProgramToken> find(String hash) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM program_token WHERE hash = :hash")
                .bind("hash", hash)
                .map((row, context) -> token(row))
                .findOne());
  }

  @Override
  public void add(ProgramToken token) {
    jdbi.useHandle(
        new Row("program_token")
                .with("id", token.id())
                .with("name", token.name())
                .with("scope", token.scope().id())
                .with("hash", token.hash())
                .with("made_by", token.madeBy())
                .with("made_micros", token.made())
                .with("ends_micros", token.ends())
            ::add);
  }

  @Override
  public void end(UUID id) {
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate("DELETE FROM program_token WHERE id = :id")
                .bind("id", id.toString())
                .execute());
  }

  private static ProgramToken token(ResultSet row) throws SQLException {
    String scope = row.getString("scope");
    return new ProgramToken(
        UUID.fromString(row.getString("id")),
        row.getString("name"),
        Identified.of(ProgramToken.Scope.class, scope)
            .orElseThrow(() -> new SQLException("No scope of a token: " + scope)),
        row.getString("hash"),
        row.getString("made_by"),
        Row.instant(row.getLong("made_micros")),
        Row.instant(row.getLong("ends_micros")));
  }
}
