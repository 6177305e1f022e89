package kerfwright.app.storage;

import java.util.List;
import java.util.Set;
import kerfwright.app.input.BadInput;
import kerfwright.quantity.Message;

/** What a role of PostgreSQL needs to work with a practice of which it owns nothing. */
public final class Rights {
  /** Chains: lines are only ever added, so the role cannot change or delete one. */
  private static final Set<String> ONLY_ADDED = Set.of("cut_record", "ledger", "trail");

  private static final String HISTORY = "flyway_schema_history";

  private Rights() {}

  /** Gives a role that much on every table, in place of what it had. */
  public static void give(Database database, String role) throws BadInput {
    if (!database.onServer()) {
      throw new BadInput("--role", Message.of("backup.role-server"));
    }
    if (!role.matches("[a-z_][a-z0-9_]{0,62}")) {
      throw new BadInput("--role", Message.of("backup.role-name"));
    }
    Sql sql = database.sql();
    sql.useTransaction(
        () -> {
          List<String> tables =
              sql.list(
                  String.class,
                  "SELECT tablename FROM pg_tables WHERE schemaname = current_schema()");
          sql.change("GRANT USAGE ON SCHEMA public TO " + role);
          for (String table : tables) {
            String on = " ON " + Snapshot.quoted(table);
            sql.change("REVOKE ALL" + on + " FROM " + role);
            sql.change("GRANT " + needed(table) + on + " TO " + role);
          }
        });
  }

  private static String needed(String table) {
    if (table.equals(HISTORY)) {
      return "SELECT";
    }
    return ONLY_ADDED.contains(table) ? "SELECT, INSERT" : "SELECT, INSERT, UPDATE, DELETE";
  }
}
