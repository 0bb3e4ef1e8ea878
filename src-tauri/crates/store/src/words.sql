-- What can be searched, and what it hangs together with: herbs and beds by their letters alone.
CREATE TABLE page (
    -- Rises with the time of the row.
    number INTEGER PRIMARY KEY,
    noun   TEXT NOT NULL,
    id     TEXT NOT NULL,
    words  TEXT NOT NULL,
    links  TEXT NOT NULL,
    at_ms  INTEGER NOT NULL,
    UNIQUE (noun, id)
) STRICT;

CREATE VIRTUAL TABLE found USING fts5 (
    words, links,
    content = 'page', content_rowid = 'number',
    tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3'
);
CREATE TRIGGER page_comes AFTER INSERT ON page BEGIN
    INSERT INTO found (rowid, words, links) VALUES (new.number, new.words, new.links);
END;
CREATE TRIGGER page_goes AFTER DELETE ON page BEGIN
    INSERT INTO found (found, rowid, words, links)
    VALUES ('delete', old.number, old.words, old.links);
END;
