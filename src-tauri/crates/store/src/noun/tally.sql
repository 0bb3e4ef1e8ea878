-- How many rows of each noun there are, and how many bytes the photos have: counting 100,000 of
-- them takes a phone too long.
CREATE TABLE tally (
    noun  TEXT PRIMARY KEY,
    count INTEGER NOT NULL,
    bytes INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
