-- Deeds that do not count, because a deed that counts took them back.
CREATE TABLE revoked (
    deed INTEGER PRIMARY KEY
) STRICT;

-- Ledger entries, each following from the row that owns it; thousandths of a gram or millilitre.
CREATE TABLE draw (
    owner_noun  TEXT NOT NULL,
    owner       TEXT NOT NULL,
    position    INTEGER NOT NULL,
    source_noun TEXT NOT NULL,
    source      TEXT NOT NULL,
    amount      INTEGER NOT NULL,
    PRIMARY KEY (owner_noun, owner, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX draw_from ON draw (source_noun, source, amount);

-- What can be drawn from: what came in, and what is left of it.
CREATE TABLE lot (
    noun    TEXT NOT NULL,
    id      TEXT NOT NULL,
    came_in INTEGER NOT NULL,
    remains INTEGER NOT NULL,
    -- Of plant, fresh or dried; nothing of a liquid.
    picked_ms INTEGER,
    herb    TEXT,
    PRIMARY KEY (noun, id)
) STRICT, WITHOUT ROWID;
-- What there is, plant by its picking, found without reading the lots of twenty years.
CREATE INDEX lot_in_stock ON lot (noun, picked_ms, id, herb, remains) WHERE remains > 0;
-- What two phones took from the same lot; hardly ever any.
CREATE INDEX lot_below_nothing ON lot (noun, id, came_in, remains) WHERE remains < 0;
