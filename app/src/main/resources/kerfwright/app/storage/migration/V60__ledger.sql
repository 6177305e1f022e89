-- One line for every move of the drawer and every version of a load, chained by hashes as the record is; lines are only ever added.
CREATE TABLE ledger (
  number INTEGER PRIMARY KEY,
  line TEXT NOT NULL,
  hash TEXT NOT NULL
);

-- One row: the end of the chain, -1 before its first line, and holds writers in line.
CREATE TABLE ledger_end (
  only_row INTEGER NOT NULL PRIMARY KEY,
  number INTEGER NOT NULL,
  hash TEXT NOT NULL
);
INSERT INTO ledger_end (only_row, number, hash)
VALUES (1, -1, '0000000000000000000000000000000000000000000000000000000000000000');
