CREATE TABLE recipe (
    id   TEXT PRIMARY KEY,
    body TEXT NOT NULL,
    name TEXT NOT NULL,
    jar  TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX recipe_of_jar ON recipe (jar);

CREATE TABLE recipe_herb (
    recipe TEXT NOT NULL,
    herb   TEXT NOT NULL,
    PRIMARY KEY (recipe, herb)
) STRICT, WITHOUT ROWID;
CREATE INDEX recipe_of_herb ON recipe_herb (herb);
