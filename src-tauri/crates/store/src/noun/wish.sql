CREATE TABLE plan (
    id       TEXT PRIMARY KEY,
    body     TEXT NOT NULL,
    herb     TEXT NOT NULL,
    ready_on TEXT NOT NULL
) STRICT, WITHOUT ROWID;
