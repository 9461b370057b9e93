-- What the records mean. Derived: `rebuild` empties and refills these three from the records.
CREATE TABLE fact(
  kind  TEXT    NOT NULL,
  key   TEXT    NOT NULL,
  open  INTEGER NOT NULL,   -- still asked for after its day
  at    INTEGER NOT NULL,   -- of its newest record
  heads TEXT    NOT NULL,   -- JSON list of hashes
  doc   TEXT    NOT NULL,   -- JSON
  PRIMARY KEY (kind, key)
) STRICT, WITHOUT ROWID;

-- Units and others that a fact is listed by.
CREATE TABLE fact_about(
  about TEXT NOT NULL,
  kind  TEXT NOT NULL,
  key   TEXT NOT NULL,
  PRIMARY KEY (about, kind, key)
) STRICT, WITHOUT ROWID;

-- Which records a fact is folded from.
CREATE TABLE fact_record(
  kind   TEXT    NOT NULL,
  key    TEXT    NOT NULL,
  device TEXT    NOT NULL,
  seq    INTEGER NOT NULL,
  PRIMARY KEY (kind, key, device, seq)
) STRICT, WITHOUT ROWID;
