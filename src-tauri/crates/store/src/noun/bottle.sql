CREATE TABLE bottle (
    id        TEXT PRIMARY KEY,
    body      TEXT NOT NULL,
    code      TEXT NOT NULL,
    jar       TEXT NOT NULL,
    filled_ms INTEGER NOT NULL,
    size      INTEGER NOT NULL,
    ended     INTEGER NOT NULL,
    end_kind  TEXT,
    ended_ms  INTEGER,
    place     TEXT,
    given_to  TEXT,
    given_at  TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX bottle_by_code ON bottle (code);
CREATE INDEX bottle_of_jar ON bottle (jar, filled_ms, id, size, end_kind, code, place, given_to, given_at);
CREATE INDEX bottle_by_time ON bottle (filled_ms, id);
CREATE INDEX bottle_ended ON bottle (end_kind, filled_ms, id) WHERE ended;
CREATE INDEX bottle_finished ON bottle (ended_ms, id, jar) WHERE end_kind = 'finished';
CREATE INDEX bottle_standing ON bottle (filled_ms, id) WHERE NOT ended;
