package kerfwright.app.storage.people;

import java.util.LinkedHashMap;
import java.util.Map;
import kerfwright.app.storage.Database;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import org.jdbi.v3.core.Jdbi;

/** The settings in a database. */
public final class StoredSettings implements Settings {
  private final Jdbi jdbi;

  public StoredSettings(Database database) {
    this.jdbi = database.jdbi();
  }

  @Override
  public SettingValues read() {
    return jdbi.inTransaction(
        handle -> {
          int version =
              handle
                  .createQuery("SELECT version FROM practice_setting_version")
                  .mapTo(Integer.class)
                  .one();
          Map<String, String> values = new LinkedHashMap<>();
          handle
              .createQuery("SELECT name, value FROM practice_setting")
              .map((row, context) -> Map.entry(row.getString("name"), row.getString("value")))
              .forEach(one -> values.put(one.getKey(), one.getValue()));
          return new SettingValues(version, values);
        });
  }

  @Override
  public boolean write(int version, Map<String, String> changed) {
    return jdbi.inTransaction(
        handle -> {
          int moved =
              handle
                  .createUpdate(
                      "UPDATE practice_setting_version SET version = version + 1"
                          + " WHERE version = :version")
                  .bind("version", version)
                  .execute();
          if (moved == 0) {
            return false;
          }
          changed.forEach(
              (name, value) -> {
                handle
                    .createUpdate("DELETE FROM practice_setting WHERE name = :name")
                    .bind("name", name)
                    .execute();
                if (!value.isEmpty()) {
                  handle
                      .createUpdate(
                          "INSERT INTO practice_setting (name, value) VALUES (:name, :value)")
                      .bind("name", name)
                      .bind("value", value)
                      .execute();
                }
              });
          return true;
        });
  }
}
