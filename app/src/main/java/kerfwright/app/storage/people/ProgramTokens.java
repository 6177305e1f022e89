package kerfwright.app.storage.people;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.people.ProgramToken;

/** Keeps the tokens of programs. */
public final class ProgramTokens {
  private final Sql sql;

  public ProgramTokens(Database database) {
    this.sql = database.sql();
  }

  /** All, the newest first. */
  public List<ProgramToken> all() {
    return sql.list(ProgramToken.class, "SELECT * FROM program_token ORDER BY id DESC");
  }

  public Optional<ProgramToken> find(String hash) {
    return sql.one(ProgramToken.class, "SELECT * FROM program_token WHERE hash = ?", hash);
  }

  public void add(ProgramToken token) {
    sql.add(
        new Row("program_token")
            .with("id", token.id())
            .with("name", token.name())
            .with("scope", token.scope())
            .with("hash", token.hash())
            .with("made_by", token.madeBy())
            .with("made_micros", token.made())
            .with("ends_micros", token.ends()));
  }

  public void end(UUID id) {
    sql.change("DELETE FROM program_token WHERE id = ?", id);
  }
}
