CREATE TABLE tray (
    id         TEXT PRIMARY KEY,
    body       TEXT NOT NULL,
    code       TEXT NOT NULL,
    harvest    TEXT NOT NULL,
    started_ms INTEGER NOT NULL,
    is_drying  INTEGER NOT NULL,
    -- Thousandths of a gram; 0 unless it was taken down.
    dried      INTEGER NOT NULL,
    -- Thousandths of a gram, as laid out; 0 unless it was thrown away while it was drying.
    lost       INTEGER NOT NULL,
    lost_ms    INTEGER,
    -- Whether it was no drying: the tray is a pot, and what came off it was strained.
    cooked     INTEGER NOT NULL,
    fresh_g    REAL NOT NULL,
    sample_fresh_g REAL,
    sample_dry_g   REAL,
    name       TEXT NOT NULL,
    started_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX tray_of_harvest ON tray (harvest, is_drying, dried, fresh_g, started_ms, id, code, name, started_at, lost, cooked);
CREATE INDEX tray_drying ON tray (started_ms) WHERE is_drying;
CREATE INDEX tray_lost ON tray (lost_ms, lost) WHERE lost > 0;
CREATE INDEX tray_by_code ON tray (code);

-- The runs from which the dry weight of the next one is learned. Plant that was wet outside is left
-- out: its fresh weight was not that of the plant.
CREATE TABLE batch (
    tray           TEXT PRIMARY KEY,
    herb           TEXT NOT NULL,
    part           TEXT NOT NULL,
    picked_ms      INTEGER NOT NULL,
    dried          INTEGER NOT NULL,
    fresh_g        REAL NOT NULL,
    sample_fresh_g REAL,
    sample_dry_g   REAL
) STRICT, WITHOUT ROWID;
CREATE INDEX batch_of_herb ON batch (herb, part, picked_ms, tray, dried, fresh_g, sample_fresh_g, sample_dry_g);
