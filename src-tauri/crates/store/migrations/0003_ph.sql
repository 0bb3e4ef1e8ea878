-- The log keeps its shape, but a check and a straining may now carry a pH that
-- was measured. A version that passes over it would go on saying that a bottle
-- keeps which may not be acid enough, so the format is raised and it refuses
-- the file.
SELECT 1;
