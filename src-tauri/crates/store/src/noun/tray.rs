//! Trays and the dried lots that come of them.

use journal::{Amount, Bed, Harvest, HarvestId, HerbKey, Noun, Tray, TrayId, Weighing, WeighingId};
use rusqlite::{Connection, Row, params};

use super::{Table, parsed};
use crate::{Failure, Reading};

/// A tray with what lists show of it.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayRow {
    /// Its id.
    pub id: TrayId,
    /// The tray.
    pub tray: Tray,
    /// The harvest it dries.
    pub harvest: Harvest,
    /// Dried plant that is left; zero while it is drying.
    pub dried_left_g: f64,
    /// The latest weigh-in.
    pub last_weighing: Option<(WeighingId, Weighing)>,
}

/// A finished drying run, from which the dry weight of the next one is learned.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnBatch {
    /// The tray.
    pub tray_id: TrayId,
    /// The tray as it was taken down.
    pub tray: Tray,
    /// The harvest it dried.
    pub harvest_id: HarvestId,
    /// What was picked.
    pub harvest: Harvest,
    /// Where it was picked.
    pub bed: Option<Bed>,
    /// Net weight when it was taken down.
    pub dried_mass_g: f64,
}

impl Table for Tray {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO tray (id, body, code, harvest, started_ms, is_drying, dried)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
        )?
        .execute(params![
            id,
            body,
            self.code.as_str(),
            self.harvest.to_string(),
            self.started_at.timestamp_millis(),
            self.taken_down.is_none(),
            self.dried().thousandths(),
        ])?;
        Ok(())
    }
}

const ROW: &str = "SELECT tray.id, tray.body, harvest.body, coalesce(lot.remains, 0),
        last.id, last.body
    FROM tray
    JOIN harvest ON harvest.id = tray.harvest
    LEFT JOIN lot ON lot.noun = 'tray' AND lot.id = tray.id
    LEFT JOIN weighing AS last ON last.id =
        (SELECT id FROM weighing WHERE tray = tray.id ORDER BY at_ms DESC, id DESC LIMIT 1)";

fn tray_row(row: &Row<'_>) -> Result<TrayRow, Failure> {
    let last: Option<String> = row.get(4)?;
    Ok(TrayRow {
        id: row.get::<_, String>(0)?.parse()?,
        tray: parsed(&row.get::<_, String>(1)?)?,
        harvest: parsed(&row.get::<_, String>(2)?)?,
        dried_left_g: Amount::from_thousandths(row.get(3)?).get(),
        last_weighing: match last {
            Some(id) => Some((id.parse()?, parsed(&row.get::<_, String>(5)?)?)),
            None => None,
        },
    })
}

impl Reading<'_> {
    fn tray_rows(
        &self,
        rest: &str,
        params: impl rusqlite::Params,
    ) -> Result<Vec<TrayRow>, Failure> {
        let mut statement = self.conn.prepare_cached(&format!("{ROW} {rest}"))?;
        let mut rows = statement.query(params)?;
        let mut trays = Vec::new();
        while let Some(row) = rows.next()? {
            trays.push(tray_row(row)?);
        }
        Ok(trays)
    }

    /// The trays that are drying, the longest first, then the dried lots with
    /// grams left, the latest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn trays(&self) -> Result<Vec<TrayRow>, Failure> {
        let mut trays =
            self.tray_rows("WHERE tray.is_drying ORDER BY tray.started_ms, tray.id", [])?;
        trays.extend(self.tray_rows(
            "WHERE tray.id IN (SELECT id FROM lot WHERE noun = 'tray' AND remains > 0)
             ORDER BY tray.started_ms DESC, tray.id DESC",
            [],
        )?);
        Ok(trays)
    }

    /// The trays of a harvest, in the order in which they were laid out.
    ///
    /// # Errors
    /// A failure to read.
    pub fn trays_of(&self, harvest: &HarvestId) -> Result<Vec<TrayRow>, Failure> {
        self.tray_rows(
            "WHERE tray.harvest = ?1 ORDER BY tray.started_ms, tray.id",
            [harvest.to_string()],
        )
    }

    /// One tray.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if there is none.
    pub fn tray(&self, id: &TrayId) -> Result<TrayRow, Failure> {
        let rows = self.tray_rows("WHERE tray.id = ?1", [id.to_string()])?;
        rows.into_iter()
            .next()
            .ok_or_else(|| Failure::not_found(Noun::Tray))
    }

    /// The maker's own finished runs of an herb and, if given, a part, latest
    /// first. Plant that was wet outside is left out: its fresh weight
    /// was not that of the plant.
    ///
    /// # Errors
    /// A failure to read.
    pub fn own_batches(
        &self,
        herb: &HerbKey,
        part: Option<&str>,
        limit: usize,
    ) -> Result<Vec<OwnBatch>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT tray.id, tray.body, harvest.id, harvest.body, bed.body
             FROM harvest JOIN tray ON tray.harvest = harvest.id AND NOT tray.is_drying
             LEFT JOIN bed ON bed.id = harvest.bed
             WHERE harvest.herb = ?1 AND harvest.surface = 'dry'
               AND (?2 IS NULL OR harvest.part = ?2)
             ORDER BY harvest.picked_ms DESC, tray.id DESC LIMIT ?3",
        )?;
        let mut rows = statement.query(params![herb.as_str(), part, limit as i64])?;
        let mut batches = Vec::new();
        while let Some(row) = rows.next()? {
            let tray: Tray = parsed(&row.get::<_, String>(1)?)?;
            batches.push(OwnBatch {
                tray_id: row.get::<_, String>(0)?.parse()?,
                dried_mass_g: tray.dried().get(),
                tray,
                harvest_id: row.get::<_, String>(2)?.parse()?,
                harvest: parsed(&row.get::<_, String>(3)?)?,
                bed: row
                    .get::<_, Option<String>>(4)?
                    .map(|body| parsed(&body))
                    .transpose()?,
            });
        }
        Ok(batches)
    }
}
