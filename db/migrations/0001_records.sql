-- The record. Rows are added and never changed. No rowid: INSERT OR REPLACE on a rowid would pass the triggers below
-- in any program that has recursive_triggers off. kind, about and at are copies of what stands in bytes.
CREATE TABLE record(
  device TEXT    NOT NULL,
  seq    INTEGER NOT NULL CHECK (seq > 0),
  hash   TEXT    NOT NULL UNIQUE CHECK (length(hash) = 64),
  kind   TEXT    NOT NULL,
  about  TEXT    NOT NULL,
  at     INTEGER NOT NULL,   -- UTC seconds
  bytes  BLOB    NOT NULL,   -- exactly what was hashed and signed
  sig    TEXT    NOT NULL,   -- Ed25519 by the device's key, hex
  PRIMARY KEY (device, seq)
) STRICT, WITHOUT ROWID;

CREATE INDEX record_by_time ON record(at, device, seq);

CREATE TRIGGER record_is_never_changed BEFORE UPDATE ON record
BEGIN SELECT RAISE(ABORT, 'a record is never changed'); END;

CREATE TRIGGER record_is_never_removed BEFORE DELETE ON record
BEGIN SELECT RAISE(ABORT, 'a record is never removed'); END;

CREATE TRIGGER record_twice BEFORE INSERT ON record
BEGIN
  SELECT RAISE(IGNORE) FROM record
    WHERE hash = NEW.hash AND bytes = NEW.bytes AND device = NEW.device AND seq = NEW.seq;
  SELECT RAISE(ABORT, 'this place in the book is taken by another record')
    FROM record WHERE hash = NEW.hash OR (device = NEW.device AND seq = NEW.seq);
END;
