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

-- Written beside the page, not by a trigger: before a statement that has one, SQLite has the index put down what it has
-- gathered, and 64 pages would take 64 times as long as one.
CREATE VIRTUAL TABLE found USING fts5 (
    words, links,
    content = 'page', content_rowid = 'number',
    tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3'
);
