-- A sum over all rows of the derived tables, keyed by the device: a row that somebody else changed, added or removed is
-- found when the book is opened. Empty: not summed yet.
CREATE TABLE seal(
  one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
  sum TEXT    NOT NULL CHECK (length(sum) = 64)
) STRICT;

CREATE INDEX fact_about_by_fact ON fact_about(kind, key);
