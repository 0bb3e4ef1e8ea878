-- The log keeps its shape, but a check and a straining may now carry a pH that
-- was measured, and a tray may have been thrown away while it was drying. A
-- version that passes over this would go on saying that a bottle keeps which may
-- not be acid enough, and that a mouldy tray is drying, so the format is raised
-- and it refuses the file.
SELECT 1;
