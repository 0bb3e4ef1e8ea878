CREATE TABLE "use" (
    id     TEXT PRIMARY KEY,
    body   TEXT NOT NULL,
    bottle TEXT NOT NULL,
    at_ms  INTEGER NOT NULL,
    ml     INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX use_of_bottle ON "use" (bottle, at_ms);
CREATE INDEX use_by_time ON "use" (at_ms, bottle, ml);
