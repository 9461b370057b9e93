-- Names and other particulars of people; the only table whose rows may be erased. Records hold SHA-256(salt || value).
CREATE TABLE private(
  subject TEXT NOT NULL,
  field   TEXT NOT NULL,
  salt    TEXT NOT NULL,   -- hex
  value   TEXT NOT NULL,
  PRIMARY KEY (subject, field)
) STRICT, WITHOUT ROWID;
