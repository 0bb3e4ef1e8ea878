CREATE TABLE straining (
    id    TEXT PRIMARY KEY,
    body  TEXT NOT NULL,
    jar   TEXT NOT NULL,
    at_ms INTEGER NOT NULL,
    out   INTEGER NOT NULL,
    reads_ph INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX straining_ph ON straining (jar) WHERE reads_ph;
CREATE INDEX straining_of_jar ON straining (jar, at_ms, out);

-- The jars that stand on their plants, found without reading those of twenty years.
CREATE TABLE standing (
    jar       TEXT PRIMARY KEY,
    poured_ms INTEGER NOT NULL,
    due_from  TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TRIGGER jar_stands AFTER INSERT ON jar
WHEN NOT new.failed AND NOT EXISTS (SELECT 1 FROM straining WHERE jar = new.id) BEGIN
    INSERT INTO standing VALUES (new.id, new.poured_ms, new.due_from);
END;
CREATE TRIGGER jar_stands_no_more AFTER DELETE ON jar BEGIN
    DELETE FROM standing WHERE jar = old.id;
END;
CREATE TRIGGER jar_is_strained AFTER INSERT ON straining BEGIN
    DELETE FROM standing WHERE jar = new.jar;
END;
CREATE TRIGGER jar_is_strained_no_more AFTER DELETE ON straining
WHEN NOT EXISTS (SELECT 1 FROM straining WHERE jar = old.jar) BEGIN
    INSERT INTO standing SELECT id, poured_ms, due_from FROM jar WHERE id = old.jar AND NOT failed;
END;
