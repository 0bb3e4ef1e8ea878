CREATE TABLE discard (
    id          TEXT PRIMARY KEY,
    body        TEXT NOT NULL,
    source_noun TEXT NOT NULL,
    source      TEXT NOT NULL,
    -- Thousandths of a gram or millilitre; 0 of what was used in another way.
    binned      INTEGER NOT NULL,
    at_ms       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
-- What is thrown away is little beside what is drunk as tea, so sums of it look at nothing else.
CREATE INDEX discard_binned ON discard (source_noun, source, binned) WHERE binned > 0;
CREATE INDEX discard_in_time ON discard (at_ms, source_noun, binned) WHERE binned > 0;
