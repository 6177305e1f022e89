-- Who saw, exported and changed what, chained by hashes as the record is; lines are only ever added. The columns repeat the line, to be searched.
CREATE TABLE trail (
  number INTEGER PRIMARY KEY,
  at_micros BIGINT NOT NULL,
  who TEXT NOT NULL,
  act TEXT NOT NULL,
  what TEXT NOT NULL,
  line TEXT NOT NULL,
  hash TEXT NOT NULL
);

-- One row: the end of the chain, and holds writers in line.
CREATE TABLE trail_end (
  only_row INTEGER NOT NULL PRIMARY KEY,
  number INTEGER NOT NULL,
  hash TEXT NOT NULL
);
INSERT INTO trail_end (only_row, number, hash)
VALUES (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');
