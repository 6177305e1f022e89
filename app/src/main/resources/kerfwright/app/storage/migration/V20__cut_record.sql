-- Entries are only ever added. What is hashed is the text; the other columns say the same again, to be found by.
CREATE TABLE cut_record (
  number INTEGER PRIMARY KEY,
  id TEXT NOT NULL,
  case_key TEXT NOT NULL,
  tooth INTEGER NOT NULL,
  instrument_id TEXT NOT NULL REFERENCES stock_item (id),
  load_id TEXT,
  at_micros BIGINT NOT NULL,
  corrects TEXT,
  entry TEXT NOT NULL,
  hash TEXT NOT NULL
);
CREATE UNIQUE INDEX cut_record_id ON cut_record (id);
CREATE INDEX cut_record_case ON cut_record (case_key, at_micros, number);
CREATE INDEX cut_record_tooth ON cut_record (tooth, at_micros, number);
CREATE INDEX cut_record_instrument ON cut_record (instrument_id, at_micros, number);
CREATE INDEX cut_record_load ON cut_record (load_id, at_micros, number);
CREATE INDEX cut_record_at ON cut_record (at_micros, number);
-- an entry is corrected once; a second correction corrects the first
CREATE UNIQUE INDEX cut_record_corrects ON cut_record (corrects);

-- One row: the end of the chain, and holds writers in line.
CREATE TABLE cut_record_end (
  only_row INTEGER NOT NULL PRIMARY KEY,
  number INTEGER NOT NULL,
  hash TEXT NOT NULL
);
INSERT INTO cut_record_end (only_row, number, hash)
VALUES (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');
