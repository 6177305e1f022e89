-- Who was at a device since a password was given there, and until when a tap brings them back.
ALTER TABLE passing_session ADD COLUMN device TEXT NOT NULL DEFAULT '';
ALTER TABLE passing_session ADD COLUMN by_tap INTEGER NOT NULL DEFAULT 0;
CREATE TABLE passing_seat (
  device TEXT NOT NULL,
  account TEXT NOT NULL,
  tap_until_micros BIGINT NOT NULL,
  PRIMARY KEY (device, account)
);
