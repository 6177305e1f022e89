-- What happened in a run beside the cuts.
CREATE TABLE run_event (
  id TEXT NOT NULL PRIMARY KEY,
  run_id TEXT NOT NULL,
  step INTEGER NOT NULL,
  what TEXT NOT NULL,
  label TEXT NOT NULL,
  depth_mm DOUBLE PRECISION,
  by_initials TEXT NOT NULL,
  at_micros BIGINT NOT NULL
);

CREATE INDEX run_event_run ON run_event (run_id, at_micros, id);
