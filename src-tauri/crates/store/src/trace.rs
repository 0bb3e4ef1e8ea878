//! Forward from a bed, a harvest, a supply or a time to everything that came of it.

use journal::{BedId, Harvest, HarvestId, Jar, JarId, SupplyId, Tray, TrayId};
use rusqlite::types::Value;
use rusqlite::{Connection, params_from_iter};

use crate::noun::all;
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

/// What came of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Came {
    /// Harvests, earliest first.
    pub harvests: Vec<(HarvestId, Harvest)>,
    /// Their trays.
    pub trays: Vec<(TrayId, Tray)>,
    /// The jars that hold any of it, and those poured on the same marc again.
    pub jars: Vec<(JarId, Jar)>,
    /// Their bottles; of those that left the shelf nothing is left.
    pub bottles: Vec<BottleRow>,
}

/// Every join is written as a cross join, so that it is made in this order: without figures about
/// the tables the planner would start from the whole ledger.
const HARVESTS: &str = "picked (id) AS (SELECT id FROM harvest WHERE ";
const REST: &str = "),
    lots (source_noun, source) AS (
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

fn rows<T: crate::noun::Table>(
    conn: &Connection,
    with: &str,
    select: &str,
    values: &[Value; 4],
) -> Result<Vec<(T::Id, T)>, Failure> {
    all::<T>(
        conn,
        &format!("{with} {select} ORDER BY 3, 1"),
        params_from_iter(values.iter()),
    )
}

impl Reading<'_> {
    /// Everything that came of a bed, a harvest, a supply, a jar or a time.
    ///
    /// # Errors
    /// A failure to read.
    pub fn came_of(&self, from: TraceFrom) -> Result<Came, Failure> {
        let (picked, values) = start(from);
        let with = format!("WITH RECURSIVE {HARVESTS}{picked}{REST}");
        let jars = rows(
            self.conn,
            &with,
            "SELECT jar.id, jar.body, jar.poured_ms
             FROM poured CROSS JOIN jar ON jar.id = poured.id",
            &values,
        )?;
        let bottles = self.bottles_of_all(jars.iter().map(|(jar, _)| jar))?;
        Ok(Came {
            harvests: rows(
                self.conn,
                &with,
                "SELECT harvest.id, harvest.body, harvest.picked_ms
                 FROM picked CROSS JOIN harvest ON harvest.id = picked.id",
                &values,
            )?,
            trays: rows(
                self.conn,
                &with,
                "SELECT tray.id, tray.body, tray.started_ms
                 FROM picked CROSS JOIN tray ON tray.harvest = picked.id",
                &values,
            )?,
            jars,
            bottles,
        })
    }

    /// The bottles of these jars, earliest filled first.
    fn bottles_of_all<'a>(
        &self,
        jars: impl Iterator<Item = &'a JarId>,
    ) -> Result<Vec<BottleRow>, Failure> {
        // Asked jar by jar: the ledger behind the jars is the dearest part, and is read once.
        // Of a bottle that left the shelf neither the ledger nor a check is asked.
        let mut statement = self.conn.prepare_cached(
            "SELECT bottle.id, bottle.body,
                coalesce(lot.came_in, bottle.size), coalesce(lot.remains, 0),
                CASE WHEN NOT bottle.ended THEN
                    (SELECT body FROM \"check\" WHERE \"check\".bottle = bottle.id
                     ORDER BY at_ms DESC, \"check\".id DESC LIMIT 1) END
             FROM bottle
             LEFT JOIN lot ON NOT bottle.ended AND lot.noun = 'bottle' AND lot.id = bottle.id
             WHERE bottle.jar = ?1",
        )?;
        let mut bottles = Vec::new();
        for jar in jars {
            let mut rows = statement.query([jar.to_string()])?;
            while let Some(row) = rows.next()? {
                bottles.push(crate::noun::bottle::bottle_row(row)?);
            }
        }
        bottles.sort_by_key(|row| (row.bottle.filled_at, row.id));
        Ok(bottles)
    }
}
