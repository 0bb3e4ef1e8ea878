CREATE TABLE shake (
    id    TEXT PRIMARY KEY,
    body  TEXT NOT NULL,
    jar   TEXT NOT NULL,
    at_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX shake_of_jar ON shake (jar, at_ms);
