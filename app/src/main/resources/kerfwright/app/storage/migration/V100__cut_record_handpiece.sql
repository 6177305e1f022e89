-- The handpiece an entry tells of, and the load it came out of, to be found by; entries of before tell of none.
ALTER TABLE cut_record ADD COLUMN handpiece_id TEXT REFERENCES stock_item (id);
ALTER TABLE cut_record ADD COLUMN handpiece_load_id TEXT;
CREATE INDEX cut_record_handpiece ON cut_record (handpiece_id, at_micros, number);
CREATE INDEX cut_record_handpiece_load ON cut_record (handpiece_load_id, at_micros, number);
