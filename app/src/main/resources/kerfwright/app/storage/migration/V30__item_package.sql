-- What the maker's package of an item says; dates as ISO 8601 days.
CREATE TABLE item_package (
  item_id TEXT NOT NULL PRIMARY KEY REFERENCES stock_item (id),
  version INTEGER NOT NULL,
  gtin TEXT,
  lot TEXT,
  serial TEXT,
  produced TEXT,
  expires TEXT,
  additional TEXT
);
CREATE INDEX item_package_gtin ON item_package (gtin, item_id);
