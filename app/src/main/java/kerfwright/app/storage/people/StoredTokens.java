package kerfwright.app.storage.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
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
                .createQuery("SELECT * FROM program_token ORDER BY made_micros DESC, id")
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
        handle ->
            handle
                .createUpdate(
                    "INSERT INTO program_token (id, name, scope, hash, made_by, made_micros,"
                        + " ends_micros) VALUES (:id, :name, :scope, :hash, :by, :made, :ends)")
                .bind("id", token.id().toString())
                .bind("name", token.name())
                .bind("scope", token.scope().id())
                .bind("hash", token.hash())
                .bind("by", token.madeBy())
                .bind("made", StoredAccounts.micros(token.made()))
                .bind("ends", StoredAccounts.micros(token.ends()))
                .execute());
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
        StoredAccounts.instant(row.getLong("made_micros")),
        StoredAccounts.instant(row.getLong("ends_micros")));
  }
}
