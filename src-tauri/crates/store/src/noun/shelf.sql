-- The bottles that stand on the shelf, with all that decides which asks for the maker first.
CREATE TABLE shelf (
    bottle        TEXT PRIMARY KEY,
    jar           TEXT NOT NULL,
    code          TEXT NOT NULL,
    remains       INTEGER NOT NULL,
    is_open       INTEGER NOT NULL,
    is_bad        INTEGER NOT NULL,
    only_the_date INTEGER NOT NULL,
    best_before   TEXT,
    next_check    TEXT,
    -- When a pH was read at which acid may not protect it.
    not_acid_on   TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX shelf_of_jar ON shelf (jar, remains, is_bad, only_the_date, best_before);
