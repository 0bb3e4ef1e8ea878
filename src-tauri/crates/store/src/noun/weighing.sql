CREATE TABLE weighing (
    id    TEXT PRIMARY KEY,
    body  TEXT NOT NULL,
    tray  TEXT NOT NULL,
    at_ms INTEGER NOT NULL,
    gross INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX weighing_of_tray ON weighing (tray, at_ms, gross);
