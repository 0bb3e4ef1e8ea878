CREATE TABLE jar (
    id        TEXT PRIMARY KEY,
    body      TEXT NOT NULL,
    code      TEXT NOT NULL,
    poured_ms INTEGER NOT NULL,
    due_from  TEXT NOT NULL,
    failed    INTEGER NOT NULL,
    preparation TEXT NOT NULL,
    marc_of   TEXT,
    herbs     TEXT NOT NULL,
    is_fresh  INTEGER NOT NULL,
    name      TEXT NOT NULL,
    poured_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX jar_by_time ON jar (poured_ms, id, failed, preparation, is_fresh, herbs);
-- Bottles are summed up, and told in a trace, by these; the whole of a jar is long.
CREATE INDEX jar_kind ON jar (id, preparation, is_fresh, herbs, poured_ms, code, failed, name, poured_at);
CREATE INDEX jar_failed ON jar (poured_ms, id) WHERE failed;
CREATE INDEX jar_on_marc ON jar (marc_of) WHERE marc_of IS NOT NULL;
CREATE INDEX jar_by_code ON jar (code);

CREATE TABLE jar_herb (
    jar  TEXT NOT NULL,
    herb TEXT NOT NULL,
    preparation TEXT NOT NULL,
    poured_ms   INTEGER NOT NULL,
    PRIMARY KEY (jar, herb)
) STRICT, WITHOUT ROWID;
-- What the latest marcs of a herb kept is asked for with every jar of it.
CREATE INDEX jar_of_herb ON jar_herb (herb, preparation, poured_ms);
