-- The log keeps its shape, but a portrait may now show a herb of the maker's own. A
-- version that does not know this could not read such a row, so the format is
-- raised and it refuses the file.
SELECT 1;
