CREATE TABLE tray (
    id         TEXT PRIMARY KEY,
    body       TEXT NOT NULL,
    code       TEXT NOT NULL,
    harvest    TEXT NOT NULL,
    started_ms INTEGER NOT NULL,
    is_drying  INTEGER NOT NULL,
    dried      INTEGER NOT NULL,
    fresh_g    REAL NOT NULL,
    sample_fresh_g REAL,
    sample_dry_g   REAL,
    name       TEXT NOT NULL,
    started_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX tray_of_harvest ON tray (harvest, is_drying, dried, fresh_g, sample_fresh_g, sample_dry_g, started_ms, id, code, name, started_at);
CREATE INDEX tray_drying ON tray (started_ms) WHERE is_drying;
CREATE INDEX tray_by_code ON tray (code);
