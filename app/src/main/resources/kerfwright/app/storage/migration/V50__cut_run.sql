-- A plan as it is carried out at the chair; the sheet is what the chair shows, as JSON.
CREATE TABLE cut_run (
  id TEXT NOT NULL PRIMARY KEY,
  version INTEGER NOT NULL,
  case_reference TEXT NOT NULL,
  tooth INTEGER NOT NULL,
  begun_micros BIGINT NOT NULL,
  by_initials TEXT NOT NULL,
  sheet TEXT NOT NULL
);

CREATE INDEX cut_run_begun ON cut_run (begun_micros);
