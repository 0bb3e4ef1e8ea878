-- The log keeps its shape, but it may now speak of portraits: photos of a jar, a
-- bottle or a bed. A version that does not know the word could show none of them
-- and would say that their photos belong to nothing, so the format is raised and
-- it refuses the file.
SELECT 1;
