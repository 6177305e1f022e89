-- The same text runs on SQLite and on PostgreSQL. Ids are time-ordered UUIDs made by the program.
CREATE TABLE stock_item (
  id TEXT NOT NULL PRIMARY KEY,
  version INTEGER NOT NULL,
  label TEXT NOT NULL,
  sort_key TEXT NOT NULL,
  pieces INTEGER NOT NULL,
  fields TEXT NOT NULL,
  kind TEXT NOT NULL,
  shape TEXT NOT NULL,
  shank TEXT NOT NULL,
  words TEXT NOT NULL,
  single_use INTEGER NOT NULL,
  place TEXT NOT NULL,
  price TEXT,
  uses INTEGER NOT NULL,
  sterilisations INTEGER NOT NULL,
  cut_mm3 TEXT NOT NULL,
  state TEXT NOT NULL,
  removed INTEGER NOT NULL
);
CREATE UNIQUE INDEX stock_item_label ON stock_item (label) WHERE removed = 0;
-- holds all a filtered page and its count need, so that far pages read no whole rows
CREATE INDEX stock_item_order
  ON stock_item (removed, sort_key, id, kind, shape, shank, state);
CREATE INDEX stock_item_state ON stock_item (removed, state);

-- Lines are only ever added.
CREATE TABLE stock_entry (
  id TEXT NOT NULL PRIMARY KEY,
  batch TEXT NOT NULL,
  item_id TEXT NOT NULL REFERENCES stock_item (id),
  at_micros BIGINT NOT NULL,
  what TEXT NOT NULL,
  note TEXT NOT NULL,
  item_before TEXT,
  item_after TEXT NOT NULL,
  undoes TEXT
);
CREATE INDEX stock_entry_item ON stock_entry (item_id, id);
CREATE INDEX stock_entry_batch ON stock_entry (batch, id);
CREATE INDEX stock_entry_undoes ON stock_entry (undoes);

-- One row: counts the changes, and holds writers in line.
CREATE TABLE stock_revision (
  only_row INTEGER NOT NULL PRIMARY KEY,
  revision BIGINT NOT NULL
);
INSERT INTO stock_revision (only_row, revision) VALUES (1, 0);
