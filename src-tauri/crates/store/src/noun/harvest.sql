CREATE TABLE harvest (
    id        TEXT PRIMARY KEY,
    body      TEXT NOT NULL,
    code      TEXT NOT NULL,
    herb      TEXT NOT NULL,
    part      TEXT NOT NULL,
    bed       TEXT,
    surface   TEXT NOT NULL,
    picked_ms INTEGER NOT NULL,
    fresh     INTEGER NOT NULL,
    photo     TEXT,
    picked_at TEXT NOT NULL
) STRICT;
-- These hold all that a season and a trace ask of a harvest.
CREATE INDEX harvest_by_time ON harvest (picked_ms, id, herb, part, bed, fresh, photo);
CREATE INDEX harvest_by_herb ON harvest (herb, picked_ms, id, part, picked_at);
CREATE INDEX harvest_by_bed ON harvest (bed, picked_ms, id, code, herb, part, fresh, picked_at);
CREATE INDEX harvest_by_code ON harvest (code);

CREATE TABLE harvest_photo (
    harvest  TEXT NOT NULL,
    position INTEGER NOT NULL,
    hash     TEXT NOT NULL,
    PRIMARY KEY (harvest, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX harvest_of_photo ON harvest_photo (hash);
