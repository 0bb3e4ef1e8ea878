-- How many rows there are: counting 100,000 photos takes a phone too long.
CREATE TABLE tally (
    noun  TEXT PRIMARY KEY,
    count INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TRIGGER harvest_comes AFTER INSERT ON harvest BEGIN
    INSERT INTO tally VALUES ('harvest', 1) ON CONFLICT (noun) DO UPDATE SET count = count + 1;
END;
CREATE TRIGGER harvest_goes AFTER DELETE ON harvest BEGIN
    UPDATE tally SET count = count - 1 WHERE noun = 'harvest';
    DELETE FROM tally WHERE noun = 'harvest' AND count = 0;
END;

CREATE TRIGGER photo_comes AFTER INSERT ON photo BEGIN
    INSERT INTO tally VALUES ('photo', 1) ON CONFLICT (noun) DO UPDATE SET count = count + 1;
END;
CREATE TRIGGER photo_goes AFTER DELETE ON photo BEGIN
    UPDATE tally SET count = count - 1 WHERE noun = 'photo';
    DELETE FROM tally WHERE noun = 'photo' AND count = 0;
END;

CREATE TRIGGER tray_comes AFTER INSERT ON tray BEGIN
    INSERT INTO tally VALUES ('tray', 1) ON CONFLICT (noun) DO UPDATE SET count = count + 1;
END;
CREATE TRIGGER tray_goes AFTER DELETE ON tray BEGIN
    UPDATE tally SET count = count - 1 WHERE noun = 'tray';
    DELETE FROM tally WHERE noun = 'tray' AND count = 0;
END;

CREATE TRIGGER jar_comes AFTER INSERT ON jar BEGIN
    INSERT INTO tally VALUES ('jar', 1) ON CONFLICT (noun) DO UPDATE SET count = count + 1;
END;
CREATE TRIGGER jar_goes AFTER DELETE ON jar BEGIN
    UPDATE tally SET count = count - 1 WHERE noun = 'jar';
    DELETE FROM tally WHERE noun = 'jar' AND count = 0;
END;
