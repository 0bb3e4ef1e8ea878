CREATE TABLE portrait (
    id      TEXT PRIMARY KEY,
    body    TEXT NOT NULL,
    of_noun TEXT NOT NULL,
    of_id   TEXT NOT NULL,
    hash    TEXT NOT NULL,
    at_ms   INTEGER NOT NULL,
    shown   INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX portrait_of_row ON portrait (of_noun, of_id, at_ms, id);
CREATE INDEX portrait_shown ON portrait (of_noun, of_id, at_ms, id, hash) WHERE shown;
CREATE INDEX portrait_of_photo ON portrait (hash);
