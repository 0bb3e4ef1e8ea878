//! Trays and the dried lots that come of them.

use journal::{Amount, Bed, Harvest, HarvestId, HerbKey, Noun, Tray, TrayId, Weighing, WeighingId};
use message::{Argument, Message, say};
use rusqlite::{Connection, Row, params};

use super::{RestsOn, Table, Words, WordsOf, parsed};
use crate::name::code;
use crate::{Failure, Page, Reading};

/// A tray with what lists show of it.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayRow {
    /// Its id.
    pub id: TrayId,
    /// The tray.
    pub tray: Tray,
    /// The harvest it dries.
    pub harvest: Harvest,
    /// Dried plant that is left; zero while it is drying, or when it was thrown away.
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

/// What a finished drying run tells of the dry weight of the next one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OwnDry {
    /// The tray.
    pub tray: TrayId,
    /// What was laid on it.
    pub fresh_mass_g: f64,
    /// Net weight when it was taken down.
    pub dried_mass_g: f64,
    /// A sample of it before and after the oven.
    pub sample_g: Option<(f64, f64)>,
}

impl Table for Tray {
    const SQL: &'static str = include_str!("tray.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = Some(|it| {
        Words::of(&[Some(it.code.as_str()), Some(&it.name), it.note.as_deref()])
            .at(it.started_at.timestamp_millis())
    });
    const NOT_THERE: fn() -> Message = || say!("not-there-tray");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-tray", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        let name = Argument::own(&self.name);
        Ok(say!("row-tray", name, code = code(&self.code)))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO tray (id, body, code, harvest, started_ms, is_drying, dried, fresh_g,
                               sample_fresh_g, sample_dry_g, name, started_at, lost, lost_ms,
                               cooked)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15)",
        )?
        .execute(params![
            id,
            body,
            self.code.as_str(),
            self.harvest.to_string(),
            self.started_at.timestamp_millis(),
            self.is_drying(),
            self.dried().thousandths(),
            self.fresh_mass_g,
            self.sample.map(|sample| sample.fresh_g),
            self.sample.map(|sample| sample.dry_g),
            self.name,
            self.started_at.to_rfc3339(),
            self.lost
                .as_ref()
                .map_or(Amount::ZERO, |_| Amount::of(self.fresh_mass_g))
                .thousandths(),
            self.lost.as_ref().map(|lost| lost.at.timestamp_millis()),
            self.cooked.is_some(),
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

    /// The trays that are drying, the longest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn trays_drying(&self) -> Result<Vec<TrayRow>, Failure> {
        self.tray_rows("WHERE tray.is_drying ORDER BY tray.started_ms, tray.id", [])
    }

    /// The trays that are drying, those first that nobody weighed since `forgotten_ms`, then the
    /// longest; and then the dried lots with grams left, the latest picking first.
    ///
    /// # Errors
    /// [`Failure::NotFound`] when `after` is not in this list; a failure to read.
    pub fn trays(
        &self,
        forgotten_ms: i64,
        after: Option<TrayId>,
        limit: usize,
    ) -> Result<Page<TrayRow>, Failure> {
        let mut ids = self.drying(forgotten_ms)?;
        let after = after.map(|id| id.to_string());
        let place = after
            .as_ref()
            .map(|after| ids.iter().position(|id| id == after));
        let behind = match place {
            None => None,
            Some(Some(at)) => {
                ids.drain(..=at);
                None
            }
            Some(None) => {
                ids.clear();
                after
            }
        };
        ids.truncate(limit + 1);
        if let Some(id) = &behind
            && !self.is_in_stock(Noun::Tray, id)?
        {
            return Err(Failure::not_found(Noun::Tray));
        }
        let room = limit + 1 - ids.len();
        ids.extend(self.in_stock(Noun::Tray, None, behind.as_deref(), room)?);
        let mut rows = Vec::new();
        for id in ids {
            rows.extend(self.tray_rows("WHERE tray.id = ?1", [id])?);
        }
        Ok(Page::of(rows, limit))
    }

    fn drying(&self, forgotten_ms: i64) -> Result<Vec<String>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT id FROM tray WHERE is_drying
             ORDER BY coalesce((SELECT max(at_ms) FROM weighing WHERE tray = tray.id), started_ms)
                 >= ?1, started_ms, id",
        )?;
        let ids = statement.query_map([forgotten_ms], |row| row.get(0))?;
        Ok(ids.collect::<Result<_, _>>()?)
    }

    /// What the maker's own finished runs of a herb's part tell, latest first. Plant that was wet
    /// outside is left out: its fresh weight was not that of the plant.
    ///
    /// # Errors
    /// A failure to read.
    pub fn own_dry(
        &self,
        herb: &HerbKey,
        part: &str,
        limit: usize,
    ) -> Result<Vec<OwnDry>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT tray, fresh_g, dried, sample_fresh_g, sample_dry_g
             FROM batch WHERE herb = ?1 AND part = ?2
             ORDER BY picked_ms DESC, tray DESC LIMIT ?3",
        )?;
        let mut rows = statement.query(params![herb.as_str(), part, limit as i64])?;
        let mut batches = Vec::new();
        while let Some(row) = rows.next()? {
            let sample: (Option<f64>, Option<f64>) = (row.get(3)?, row.get(4)?);
            batches.push(OwnDry {
                tray: row.get::<_, String>(0)?.parse()?,
                fresh_mass_g: row.get(1)?,
                dried_mass_g: Amount::from_thousandths(row.get(2)?).get(),
                sample_g: sample.0.zip(sample.1),
            });
        }
        Ok(batches)
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
             FROM batch CROSS JOIN tray ON tray.id = batch.tray
             CROSS JOIN harvest ON harvest.id = tray.harvest
             LEFT JOIN bed ON bed.id = harvest.bed
             WHERE batch.herb = ?1 AND (?2 IS NULL OR batch.part = ?2)
             ORDER BY batch.picked_ms DESC, batch.tray DESC LIMIT ?3",
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
