### The season, and where a thing comes from.
