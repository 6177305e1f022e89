CREATE TABLE practice_setting (
  name TEXT NOT NULL PRIMARY KEY,
  value TEXT NOT NULL
);

-- One row: counts the changes.
CREATE TABLE practice_setting_version (
  only_row INTEGER NOT NULL PRIMARY KEY,
  version INTEGER NOT NULL
);
INSERT INTO practice_setting_version (only_row, version) VALUES (1, 0);
