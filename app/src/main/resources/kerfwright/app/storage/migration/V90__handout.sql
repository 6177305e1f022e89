-- Every version of a handout that was kept: what it is about and the practice's own words.
CREATE TABLE handout (
  id TEXT NOT NULL,
  version INTEGER NOT NULL,
  at_micros BIGINT NOT NULL,
  subject TEXT NOT NULL,
  title TEXT NOT NULL,
  words TEXT NOT NULL,
  PRIMARY KEY (id, version)
);

CREATE INDEX handout_at ON handout (at_micros);
