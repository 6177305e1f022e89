-- A list handed in and not yet taken over; kept here so that any process can show it.
CREATE TABLE import_draft (
  id TEXT NOT NULL PRIMARY KEY,
  at_micros BIGINT NOT NULL,
  name TEXT NOT NULL,
  list TEXT NOT NULL,
  batch TEXT
);
