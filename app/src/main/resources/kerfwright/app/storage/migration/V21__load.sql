-- Loads of the sterilisers; what was done to a load, its pouches and their contents stand in JSON, and once more to be found by.
CREATE TABLE steriliser_load (
  id TEXT NOT NULL PRIMARY KEY,
  version INTEGER NOT NULL,
  name TEXT NOT NULL,
  steriliser TEXT NOT NULL,
  started_micros BIGINT NOT NULL,
  state TEXT NOT NULL,
  decided_micros BIGINT,
  load TEXT NOT NULL
);
CREATE UNIQUE INDEX steriliser_load_name ON steriliser_load (name);
CREATE INDEX steriliser_load_of ON steriliser_load (steriliser, started_micros);
CREATE INDEX steriliser_load_started ON steriliser_load (started_micros);
CREATE INDEX steriliser_load_state ON steriliser_load (state, started_micros);

CREATE TABLE pouch (
  id TEXT NOT NULL PRIMARY KEY,
  code TEXT NOT NULL,
  load_id TEXT NOT NULL REFERENCES steriliser_load (id),
  last_day TEXT
);
CREATE UNIQUE INDEX pouch_code ON pouch (code);

CREATE TABLE pouch_content (
  item_id TEXT NOT NULL REFERENCES stock_item (id),
  started_micros BIGINT NOT NULL,
  pouch_id TEXT NOT NULL REFERENCES pouch (id),
  PRIMARY KEY (item_id, started_micros)
);
CREATE INDEX pouch_content_pouch ON pouch_content (pouch_id);
