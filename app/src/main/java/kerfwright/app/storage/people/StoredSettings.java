package kerfwright.app.storage.people;

import java.util.Map;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Row;
import kerfwright.app.storage.Sql;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** The settings in a database. */
public final class StoredSettings implements Settings {
  private final Sql sql;

  public StoredSettings(Database database) {
    this.sql = database.sql();
  }

  @Override
  public SettingValues read() {
    return sql.inTransaction(
        () -> {
          int version = (int) sql.number("SELECT version FROM practice_setting_version");
          Map<String, String> values =
              sql.map(
                  row -> row.getString("name"),
                  row -> row.getString("value"),
                  "SELECT name, value FROM practice_setting");
          return new SettingValues(version, values);
        });
  }

  @Override
  public boolean write(int version, Map<String, String> changed) {
    return sql.inTransaction(
        () -> {
          boolean unchanged =
              sql.change(
                      "UPDATE practice_setting_version SET version = version + 1 WHERE version = ?",
                      version)
                  == 1;
          if (unchanged) {
            changed.forEach(this::set);
          }
          return unchanged;
        });
  }

  private void set(String name, String value) {
    sql.change("DELETE FROM practice_setting WHERE name = ?", name);
    if (!value.isEmpty()) {
      sql.add(new Row("practice_setting").with("name", name).with("value", value));
    }
  }
}
