-- Instruments a planned day lacks that somebody put on the order list.
CREATE TABLE order_wish (
  type TEXT NOT NULL,
  day TEXT NOT NULL,
  pieces INTEGER NOT NULL,
  PRIMARY KEY (type, day)
);
