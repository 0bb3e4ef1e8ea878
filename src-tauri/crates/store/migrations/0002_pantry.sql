-- The log keeps its shape, but it may now speak of shakes, strainings, bottles,
-- uses, checks, recipes, droppers and plans. A version that does not know these
-- words would count a jar's liquid and a supply wrongly, so the format is
-- raised and it refuses the file instead of passing over them.
SELECT 1;
