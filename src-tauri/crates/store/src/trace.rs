//! Forward from a bed, a harvest, a supply or a time to everything that came of it.

use journal::{Amount, BedId, EndKind, HarvestId, HerbKey, JarId, Noun, SupplyId};
use rusqlite::types::Value;
use rusqlite::{Row, params_from_iter};

use crate::noun::discard::binned_of;
use crate::{BottleRow, Failure, Reading};

/// Where a trace starts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TraceFrom {
    /// Everything picked in a bed.
    Bed(BedId),
    /// One harvest.
    Harvest(HarvestId),
    /// Everything poured from a supply.
    Supply(SupplyId),
    /// One jar.
    Jar(JarId),
    /// Everything picked from one moment to before another, in milliseconds.
    Picked(i64, i64),
}

/// What came of it: narrow rows, for they are thousands. Ids, codes and moments are text as the wire
/// has it.
#[derive(Debug, Clone, PartialEq)]
pub struct Came {
    /// Harvests, earliest first.
    pub harvests: Vec<CameHarvest>,
    /// Their trays, earliest first.
    pub trays: Vec<CameTray>,
    /// The jars that hold any of it, and those poured on the same marc again; earliest first.
    pub jars: Vec<CameJar>,
    /// Their bottles, earliest filled first.
    pub bottles: Vec<CameBottle>,
}

/// A harvest in a trace.
#[derive(Debug, Clone, PartialEq)]
pub struct CameHarvest {
    /// Its id.
    pub id: String,
    /// Its code.
    pub code: String,
    /// What was picked.
    pub herb: HerbKey,
    /// Which part of it.
    pub part: String,
    /// How much, fresh.
    pub fresh: Amount,
    /// What was thrown away of it fresh.
    pub binned: Amount,
    /// When.
    pub picked_at: String,
}

/// A tray in a trace.
#[derive(Debug, Clone, PartialEq)]
pub struct CameTray {
    /// Its id.
    pub id: String,
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// The harvest on it.
    pub harvest: String,
    /// When it was laid out.
    pub started_at: String,
    /// What was thrown away of it dried.
    pub binned: Amount,
    /// What was laid out on it fresh and thrown away while it was drying.
    pub lost: Amount,
}

/// A jar in a trace.
#[derive(Debug, Clone, PartialEq)]
pub struct CameJar {
    /// Its id.
    pub id: String,
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Key of the preparation.
    pub preparation: String,
    /// Whether any plant went in fresh.
    pub is_fresh: bool,
    /// When it was poured.
    pub poured_at: String,
    /// Whether it was set aside.
    pub failed: bool,
}

/// A bottle in a trace.
#[derive(Debug, Clone, PartialEq)]
pub struct CameBottle {
    /// Its id.
    pub id: String,
    /// The jar it was filled from.
    pub jar: String,
    /// Its code.
    pub code: String,
    /// What went into it.
    pub size: Amount,
    /// Where it stands.
    pub place: Option<String>,
    /// Whether it stands or how it left the shelf.
    pub fate: Fate,
    filled_ms: i64,
}

/// What became of a bottle.
#[derive(Debug, Clone, PartialEq)]
pub enum Fate {
    /// It stands on the shelf.
    Stands(Box<BottleRow>),
    /// It was given away.
    Given {
        /// To whom.
        to: String,
        /// When.
        at: String,
    },
    /// It left the shelf in another way.
    Left(EndKind),
}

/// Every join is written as a cross join, so that it is made in this order: without figures about
/// the tables the planner would start from the whole ledger. What is read stands in indexes, which
/// hold a trace's rows side by side; the bodies lie scattered over the file.
const LOTS: &str = "lots (source_noun, source) AS (
        SELECT 'harvest', id FROM picked
        UNION ALL SELECT 'tray', tray.id FROM picked CROSS JOIN tray ON tray.harvest = picked.id
        UNION ALL SELECT 'supply', ?2 WHERE ?2 IS NOT NULL),
    poured (id) AS (
        SELECT draw.owner FROM lots CROSS JOIN draw USING (source_noun, source)
        WHERE draw.owner_noun = 'jar'
        UNION SELECT ?3 WHERE ?3 IS NOT NULL
        UNION SELECT jar.id FROM poured CROSS JOIN jar ON jar.marc_of = poured.id)";

/// Which harvests it starts from, and what the numbered parameters are; each predicate names them all.
fn start(from: TraceFrom) -> (&'static str, [Value; 4]) {
    let mut values = [Value::Null, Value::Null, Value::Null, Value::Null];
    let picked = match from {
        TraceFrom::Bed(id) => {
            values[0] = id.to_string().into();
            "?4 IS NULL AND bed = ?1"
        }
        TraceFrom::Harvest(id) => {
            values[0] = id.to_string().into();
            "?4 IS NULL AND id = ?1"
        }
        TraceFrom::Supply(id) => {
            values[1] = id.to_string().into();
            "?4 IS NOT NULL AND id = ?1"
        }
        TraceFrom::Jar(id) => {
            values[2] = id.to_string().into();
            "?4 IS NOT NULL AND id = ?1"
        }
        TraceFrom::Picked(low, high) => {
            values[0] = low.into();
            values[3] = high.into();
            "picked_ms >= ?1 AND picked_ms < ?4"
        }
    };
    (picked, values)
}

impl Reading<'_> {
    /// Everything that came of a bed, a harvest, a supply, a jar or a time.
    ///
    /// # Errors
    /// A failure to read.
    pub fn came_of(&self, from: TraceFrom) -> Result<Came, Failure> {
        let (picked, values) = start(from);
        let harvests = format!(
            "SELECT id, code, herb, part, fresh, picked_at, {} FROM harvest WHERE {picked}
             ORDER BY picked_ms, id",
            binned_of(Noun::Harvest)
        );
        let picked =
            format!("WITH RECURSIVE picked (id) AS (SELECT id FROM harvest WHERE {picked})");
        let trays = format!(
            "{picked} SELECT tray.id, tray.code, tray.name, tray.harvest, tray.started_at, {}, tray.lost
             FROM picked CROSS JOIN tray INDEXED BY tray_of_harvest ON tray.harvest = picked.id
             ORDER BY tray.started_ms, tray.id",
            binned_of(Noun::Tray)
        );
        let jars = format!(
            "{picked}, {LOTS} SELECT jar.id, code, name, preparation, is_fresh, poured_at, failed
             FROM poured CROSS JOIN jar INDEXED BY jar_kind ON jar.id = poured.id
             ORDER BY poured_ms, jar.id"
        );
        let jars = self.each(&jars, &values, |row| {
            Ok(CameJar {
                id: row.get(0)?,
                code: row.get(1)?,
                name: row.get(2)?,
                preparation: row.get(3)?,
                is_fresh: row.get(4)?,
                poured_at: row.get(5)?,
                failed: row.get(6)?,
            })
        })?;
        Ok(Came {
            harvests: self.each(&harvests, &values, |row| {
                Ok(CameHarvest {
                    id: row.get(0)?,
                    code: row.get(1)?,
                    herb: row.get::<_, String>(2)?.parse()?,
                    part: row.get(3)?,
                    fresh: Amount::from_thousandths(row.get(4)?),
                    picked_at: row.get(5)?,
                    binned: Amount::from_thousandths(row.get(6)?),
                })
            })?,
            trays: self.each(&trays, &values, |row| {
                Ok(CameTray {
                    id: row.get(0)?,
                    code: row.get(1)?,
                    name: row.get(2)?,
                    harvest: row.get(3)?,
                    started_at: row.get(4)?,
                    binned: Amount::from_thousandths(row.get(5)?),
                    lost: Amount::from_thousandths(row.get(6)?),
                })
            })?,
            bottles: self.bottles_of_all(&jars)?,
            jars,
        })
    }

    fn each<T>(
        &self,
        sql: &str,
        values: &[Value; 4],
        read: impl Fn(&Row<'_>) -> Result<T, Failure>,
    ) -> Result<Vec<T>, Failure> {
        let mut statement = self.conn.prepare_cached(sql)?;
        let asked = statement.parameter_count();
        let mut rows = statement.query(params_from_iter(&values[..asked]))?;
        let mut found = Vec::new();
        while let Some(row) = rows.next()? {
            found.push(read(row)?);
        }
        Ok(found)
    }

    /// Asked jar by jar: the ledger behind the jars is the dearest part, and is read once.
    fn bottles_of_all(&self, jars: &[CameJar]) -> Result<Vec<CameBottle>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT id, code, size, place, filled_ms, end_kind, given_to, given_at
             FROM bottle INDEXED BY bottle_of_jar WHERE jar = ?1",
        )?;
        let mut bottles = Vec::new();
        for jar in jars {
            let mut rows = statement.query([&jar.id])?;
            while let Some(row) = rows.next()? {
                let id: String = row.get(0)?;
                bottles.push(CameBottle {
                    fate: self.fate(&id, row)?,
                    id,
                    jar: jar.id.clone(),
                    code: row.get(1)?,
                    size: Amount::from_thousandths(row.get(2)?),
                    place: row.get(3)?,
                    filled_ms: row.get(4)?,
                });
            }
        }
        bottles.sort_by(|one, other| (one.filled_ms, &one.id).cmp(&(other.filled_ms, &other.id)));
        Ok(bottles)
    }

    fn fate(&self, id: &str, row: &Row<'_>) -> Result<Fate, Failure> {
        let Some(kind) = row.get::<_, Option<String>>(5)? else {
            return Ok(Fate::Stands(Box::new(self.bottle(&id.parse()?)?)));
        };
        match EndKind::parse(&kind) {
            Some(EndKind::Given) => Ok(Fate::Given {
                to: row.get::<_, Option<String>>(6)?.unwrap_or_default(),
                at: row.get::<_, Option<String>>(7)?.unwrap_or_default(),
            }),
            Some(kind) => Ok(Fate::Left(kind)),
            None => Err(Failure::Damaged(format!("{kind:?} is no end of a bottle"))),
        }
    }
}
