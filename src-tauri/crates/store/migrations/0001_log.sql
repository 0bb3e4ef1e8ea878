-- The log is the only truth. Everything else in the file is made from it and
-- is made anew whenever its shape changes, so only the log ever migrates.

CREATE TABLE about (
    key   TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- One batch of changes. `number` is the order of arrival in this file; the
-- order that counts is (milliseconds, counter, device, id).
CREATE TABLE deed (
    number       INTEGER PRIMARY KEY,
    id           TEXT NOT NULL UNIQUE,
    milliseconds INTEGER NOT NULL,
    counter      INTEGER NOT NULL,
    device       TEXT NOT NULL,
    text         TEXT NOT NULL,
    revokes      TEXT
) STRICT;
-- Device and id decide so seldom that they are not worth the room.
CREATE INDEX deed_in_order ON deed (milliseconds, counter);
CREATE INDEX deed_that_revokes ON deed (revokes) WHERE revokes IS NOT NULL;

CREATE TABLE change (
    deed     INTEGER NOT NULL REFERENCES deed (number),
    position INTEGER NOT NULL,
    noun     TEXT NOT NULL,
    row      TEXT NOT NULL,
    act      TEXT NOT NULL CHECK (act IN ('record', 'correct', 'strike')),
    fields   TEXT NOT NULL CHECK (json_valid(fields)),
    PRIMARY KEY (deed, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX change_of_row ON change (noun, row);

CREATE TRIGGER deed_is_never_changed BEFORE UPDATE ON deed
BEGIN SELECT RAISE(ABORT, 'a deed is never changed'); END;
CREATE TRIGGER deed_is_never_erased BEFORE DELETE ON deed
BEGIN SELECT RAISE(ABORT, 'a deed is never erased'); END;
CREATE TRIGGER change_is_never_changed BEFORE UPDATE ON change
BEGIN SELECT RAISE(ABORT, 'a change is never changed'); END;
CREATE TRIGGER change_is_never_erased BEFORE DELETE ON change
BEGIN SELECT RAISE(ABORT, 'a change is never erased'); END;
