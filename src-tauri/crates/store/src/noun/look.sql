CREATE TABLE "check" (
    id     TEXT PRIMARY KEY,
    body   TEXT NOT NULL,
    bottle TEXT NOT NULL,
    at_ms  INTEGER NOT NULL,
    reads_ph INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX check_of_bottle ON "check" (bottle, at_ms);
CREATE INDEX check_ph ON "check" (bottle) WHERE reads_ph;
