-- What an app makes somebody's codes from (RFC 6238), the step of the last code taken, and hashes of what stands in for a code.
CREATE TABLE person_authenticator (
  account TEXT NOT NULL PRIMARY KEY,
  secret TEXT NOT NULL,
  switched_on INTEGER NOT NULL,
  last_step BIGINT NOT NULL
);
CREATE TABLE person_recovery (
  account TEXT NOT NULL,
  hash TEXT NOT NULL,
  PRIMARY KEY (account, hash)
);

-- When somebody last gave all that is asked of them at a device.
ALTER TABLE passing_seat ADD COLUMN proven_micros BIGINT NOT NULL DEFAULT 0;

-- The password was right, the code is still to come.
CREATE TABLE passing_half (
  hash TEXT NOT NULL PRIMARY KEY,
  account TEXT NOT NULL,
  until_micros BIGINT NOT NULL
);
