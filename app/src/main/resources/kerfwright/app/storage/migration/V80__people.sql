-- Who signs in. Those who left stay, because the record names them.
CREATE TABLE person_account (
  id TEXT NOT NULL PRIMARY KEY,
  version INTEGER NOT NULL,
  initials TEXT NOT NULL UNIQUE,
  role TEXT NOT NULL,
  active INTEGER NOT NULL,
  password TEXT NOT NULL,
  pin TEXT NOT NULL,
  code_until_micros BIGINT
);

-- What programs show instead of a sign-in, as SHA-256.
CREATE TABLE program_token (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  scope TEXT NOT NULL,
  hash TEXT NOT NULL UNIQUE,
  made_by TEXT NOT NULL,
  made_micros BIGINT NOT NULL,
  ends_micros BIGINT NOT NULL
);

-- What begins with passing_ is of the day, and goes into no backup and no export.
CREATE TABLE passing_session (
  hash TEXT NOT NULL PRIMARY KEY,
  account TEXT NOT NULL,
  begun_micros BIGINT NOT NULL,
  used_micros BIGINT NOT NULL,
  confirmed_micros BIGINT NOT NULL,
  locked INTEGER NOT NULL,
  wrong_pins INTEGER NOT NULL
);

CREATE TABLE passing_wait (
  place TEXT NOT NULL PRIMARY KEY,
  failures INTEGER NOT NULL,
  until_micros BIGINT NOT NULL
);
