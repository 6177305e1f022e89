-- Every version of a day list with its plan; a change adds one, so that the one before can come back.
CREATE TABLE day_book (
  day TEXT NOT NULL,
  version INTEGER NOT NULL,
  at_micros BIGINT NOT NULL,
  what TEXT NOT NULL,
  bookings INTEGER NOT NULL,
  document TEXT NOT NULL,
  PRIMARY KEY (day, version)
);

-- Trays the practice uses again and again.
CREATE TABLE tray_template (
  name TEXT NOT NULL PRIMARY KEY,
  document TEXT NOT NULL
);
