//! Recipes, droppers and plans.

use journal::{Dropper, DropperId, JarId, Recipe, RecipeId, Wish, WishId};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Recipe {
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
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO dropper (id, body, name) VALUES (?1, ?2, ?3)")?
            .execute(params![id, body, self.name])?;
        Ok(())
    }
}

impl Table for Wish {
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
