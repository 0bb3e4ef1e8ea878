-- A deed keeps, beside its line, the message that the line was said from: an id
-- of the catalogue with its arguments, as JSON, so that it is said anew in the
-- language of whoever reads it. Older deeds have none and stay as they were
-- written. The checksum takes a message in where there is one; a version that
-- did not know this would find such deeds changed, so the format is raised and
-- it refuses the file.
ALTER TABLE deed ADD COLUMN message TEXT;
