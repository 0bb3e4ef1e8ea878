//! Recipes, droppers and plans.

use journal::{Dropper, DropperId, Herb, JarId, Noun, Recipe, RecipeId, Wish, WishId};
use message::{Argument, Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, Words, WordsOf, all};
use crate::name::known;
use crate::{Failure, Reading};

impl Table for Recipe {
    const SQL: &'static str = include_str!("recipe.sql");
    const RESTS_ON: RestsOn = &[
        (Noun::Herb, "SELECT recipe FROM recipe_herb WHERE herb = ?1"),
        (Noun::Jar, "SELECT id FROM recipe WHERE jar = ?1"),
    ];
    const WORDS: WordsOf<Self> = Some(|it| {
        Words::of(&[Some(&it.name), Some(&it.preparation), it.note.as_deref()])
            .linked(it.plants.iter().map(|plant| plant.herb.as_str()))
    });
    const NOT_THERE: fn() -> Message = || say!("not-there-recipe");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-recipe", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(say!("row-recipe", name = Argument::own(&self.name)))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO recipe (id, body, name, jar) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![
                id,
                body,
                self.name,
                self.jar.map(|jar| jar.to_string())
            ])?;
        let mut herbs = conn
            .prepare_cached("INSERT OR IGNORE INTO recipe_herb (recipe, herb) VALUES (?1, ?2)")?;
        for plant in &self.plants {
            herbs.execute([id, plant.herb.as_str()])?;
        }
        Ok(())
    }

    fn remove(conn: &Connection, id: &str) -> Result<(), Failure> {
        conn.prepare_cached("DELETE FROM recipe WHERE id = ?1")?
            .execute([id])?;
        conn.prepare_cached("DELETE FROM recipe_herb WHERE recipe = ?1")?
            .execute([id])?;
        Ok(())
    }
}

impl Table for Dropper {
    const SQL: &'static str = include_str!("dropper.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-dropper");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-dropper", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(say!("row-dropper", name = Argument::own(&self.name)))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO dropper (id, body, name) VALUES (?1, ?2, ?3)")?
            .execute(params![id, body, self.name])?;
        Ok(())
    }
}

impl Table for Wish {
    const SQL: &'static str = include_str!("wish.sql");
    const RESTS_ON: RestsOn = &[(Noun::Herb, "SELECT id FROM plan WHERE herb = ?1")];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-plan");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-plan", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let herb = match known::<Herb>(conn, self.herb.as_str())? {
            Some(own) => Argument::own(own.common),
            // Any other key is one of the tables, which stand above.
            None => Message::of_table(format!("herb-{}", self.herb)).into(),
        };
        Ok(say!("row-plan", count = self.bottles, herb))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO plan (id, body, herb, ready_on) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![
                id,
                body,
                self.herb.as_str(),
                self.ready_on.to_string()
            ])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// The recipes, by name.
    ///
    /// # Errors
    /// A failure to read.
    pub fn recipes(&self) -> Result<Vec<(RecipeId, Recipe)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM recipe ORDER BY name COLLATE NOCASE, id",
            [],
        )
    }

    /// The recipe that was kept from a jar, the latest if there are several.
    ///
    /// # Errors
    /// A failure to read.
    pub fn recipe_of(&self, jar: &JarId) -> Result<Option<(RecipeId, Recipe)>, Failure> {
        let found = all(
            self.conn,
            "SELECT id, body FROM recipe WHERE jar = ?1 ORDER BY id DESC LIMIT 1",
            [jar.to_string()],
        )?;
        Ok(found.into_iter().next())
    }

    /// The droppers, by name, the latest counted of each name first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn droppers(&self) -> Result<Vec<(DropperId, Dropper)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM dropper ORDER BY name COLLATE NOCASE, id DESC",
            [],
        )
    }

    /// The bottles that are wanted, the earliest day first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn wishes(&self) -> Result<Vec<(WishId, Wish)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM plan ORDER BY ready_on, id",
            [],
        )
    }
}
