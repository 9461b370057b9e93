-- A sum over all rows of the derived tables, and a mark over that sum and the heads of the records it goes with; both
-- keyed by the device. A row that somebody else changed, added, removed or put back from an older copy is found when the
-- book is opened.
CREATE TABLE seal(
  one  INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
  sum  TEXT    NOT NULL CHECK (length(sum) = 64),
  mark TEXT    NOT NULL CHECK (length(mark) = 64)
) STRICT;

CREATE INDEX fact_about_by_fact ON fact_about(kind, key);
