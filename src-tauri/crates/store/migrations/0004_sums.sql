-- Every deed carries a checksum, and the deeds of each device are counted, so
-- that a digit that changed in the log is found, and a deed that is gone. A
-- version that did not know this would write deeds without a checksum, so the
-- format is raised and it refuses the file.
ALTER TABLE deed ADD COLUMN sum BLOB;

CREATE TABLE writer (
    device TEXT PRIMARY KEY,
    deeds  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
