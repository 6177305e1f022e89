-- Every version of a case that was kept: its form and its plan, as JSON.
CREATE TABLE kept_case (
  id TEXT NOT NULL,
  version INTEGER NOT NULL,
  reference TEXT NOT NULL,
  reference_small TEXT NOT NULL,
  tooth INTEGER NOT NULL,
  procedure_id TEXT NOT NULL,
  at_micros BIGINT NOT NULL,
  document TEXT NOT NULL,
  PRIMARY KEY (id, version)
);

CREATE INDEX kept_case_at ON kept_case (at_micros);
CREATE INDEX kept_case_named ON kept_case (reference_small, tooth, procedure_id);
