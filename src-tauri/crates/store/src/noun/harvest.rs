//! Harvests.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use chrono::{DateTime, FixedOffset, NaiveDate};
use journal::{
    Amount, Bed, BedId, Harvest, HarvestId, HarvestState, HerbKey, Jar, JarId, Noun, PlantState,
};
use message::{Message, say};
use rusqlite::types::Value;
use rusqlite::{Connection, Row, params, params_from_iter};

use super::{RestsOn, Table, Words, WordsOf, find, parsed};
use crate::name::code;
use crate::{Failure, Page, Reading, TrayRow};

/// A harvest with what lists show of it.
#[derive(Debug, Clone, PartialEq)]
pub struct HarvestRow {
    /// Its id.
    pub id: HarvestId,
    /// The harvest.
    pub harvest: Harvest,
    /// Where it was picked.
    pub bed: Option<(BedId, Bed)>,
    /// Fresh plant that is left.
    pub fresh_left_g: f64,
    /// Dried plant of it that is left.
    pub dried_left_g: f64,
    /// How far it has got.
    pub state: HarvestState,
}

/// Which harvests.
#[derive(Debug, Clone, PartialEq)]
pub struct HarvestFilter {
    /// Only those after this one in the list.
    pub before: Option<HarvestId>,
    /// At most so many.
    pub limit: usize,
    /// Only of this herb.
    pub herb: Option<HerbKey>,
    /// Only from this bed.
    pub bed: Option<BedId>,
}

/// A part of a harvest in a jar.
#[derive(Debug, Clone, PartialEq)]
pub struct JarUse {
    /// The jar.
    pub jar_id: JarId,
    /// The jar as poured.
    pub jar: Jar,
    /// How much went into it.
    pub mass_g: f64,
    /// Fresh or dried.
    pub state: PlantState,
}

/// A harvest with all that came of it.
#[derive(Debug, Clone, PartialEq)]
pub struct HarvestPage {
    /// The harvest.
    pub row: HarvestRow,
    /// Its trays.
    pub trays: Vec<TrayRow>,
    /// The jars that hold some of it, fresh or dried.
    pub jars: Vec<JarUse>,
}

/// When an herb was last picked.
#[derive(Debug, Clone, PartialEq)]
pub struct HerbUse {
    /// The herb.
    pub herb: HerbKey,
    /// The part that was picked last.
    pub part: String,
    /// When.
    pub picked_at: DateTime<FixedOffset>,
}

/// A day on which a part of an herb was picked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PickingDay {
    /// The herb.
    pub herb: HerbKey,
    /// The part.
    pub part: String,
    /// The day, where it was picked.
    pub on: NaiveDate,
}

/// What a herb's part gave in a bed.
#[derive(Debug, Clone, PartialEq)]
pub struct YieldSum {
    /// The herb.
    pub herb: HerbKey,
    /// The part.
    pub part: String,
    /// Where it was picked.
    pub bed: Option<Bed>,
    /// How much was picked.
    pub fresh: Amount,
    /// How much was taken down dry of it.
    pub dried: Amount,
    /// What that had weighed fresh, g.
    pub fresh_of_dried_g: f64,
    /// In how many pickings.
    pub harvests: u32,
    /// The first photo of it, and when that was.
    pub photo: Option<String>,
    /// When the first picking with a photo was.
    pub photo_ms: Option<i64>,
}

impl Table for Harvest {
    const SQL: &'static str = include_str!("harvest.sql");
    const RESTS_ON: RestsOn = &[
        (Noun::Herb, "SELECT id FROM harvest WHERE herb = ?1"),
        (Noun::Bed, "SELECT id FROM harvest WHERE bed = ?1"),
        (
            Noun::Photo,
            "SELECT harvest FROM harvest_photo WHERE hash = ?1",
        ),
    ];
    const WORDS: WordsOf<Self> = Some(|it| {
        let bed = it.bed.map(|id| id.to_string());
        Words::of(&[
            Some(it.code.as_str()),
            Some(&it.part),
            it.stage.as_deref(),
            it.note.as_deref(),
        ])
        .linked([it.herb.as_str()].into_iter().chain(bed.as_deref()))
        .at(it.picked_at.timestamp_millis())
    });
    const NOT_THERE: fn() -> Message = || say!("not-there-harvest");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-harvest", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(say!("row-harvest", code = code(&self.code)))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO harvest (id, body, code, herb, part, bed, surface, picked_ms, fresh, photo,
                                  picked_at)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)",
        )?
        .execute(params![
            id,
            body,
            self.code.as_str(),
            self.herb.as_str(),
            self.part,
            self.bed.map(|id| id.to_string()),
            self.surface.as_str(),
            self.picked_at.timestamp_millis(),
            self.fresh().thousandths(),
            self.photos.first().map(journal::PhotoHash::as_str),
            self.picked_at.to_rfc3339(),
        ])?;
        let mut photos = conn.prepare_cached(
            "INSERT INTO harvest_photo (harvest, position, hash) VALUES (?1, ?2, ?3)",
        )?;
        for (position, hash) in self.photos.iter().enumerate() {
            photos.execute(params![id, position as i64, hash.as_str()])?;
        }
        Ok(())
    }

    fn remove(conn: &Connection, id: &str) -> Result<(), Failure> {
        conn.prepare_cached("DELETE FROM harvest WHERE id = ?1")?
            .execute([id])?;
        conn.prepare_cached("DELETE FROM harvest_photo WHERE harvest = ?1")?
            .execute([id])?;
        Ok(())
    }
}

const ROW: &str = "SELECT harvest.id, harvest.body, bed.id, bed.body,
        coalesce((SELECT remains FROM lot WHERE noun = 'harvest' AND lot.id = harvest.id), 0),
        (SELECT count(*) FROM tray WHERE tray.harvest = harvest.id AND tray.is_drying),
        (SELECT coalesce(sum(max(lot.remains, 0)), 0)
         FROM tray CROSS JOIN lot ON lot.noun = 'tray' AND lot.id = tray.id
         WHERE tray.harvest = harvest.id AND NOT tray.cooked)
    FROM harvest LEFT JOIN bed ON bed.id = harvest.bed";

fn harvest_row(row: &Row<'_>) -> Result<HarvestRow, Failure> {
    let fresh_left = Amount::from_thousandths(row.get(4)?);
    let trays_drying: i64 = row.get(5)?;
    let dried_left = Amount::from_thousandths(row.get(6)?);
    Ok(HarvestRow {
        id: row.get::<_, String>(0)?.parse()?,
        harvest: parsed(&row.get::<_, String>(1)?)?,
        bed: match row.get::<_, Option<String>>(2)? {
            Some(id) => Some((id.parse()?, parsed(&row.get::<_, String>(3)?)?)),
            None => None,
        },
        fresh_left_g: fresh_left.get(),
        dried_left_g: dried_left.get(),
        state: HarvestState::of(fresh_left, trays_drying.unsigned_abs() as usize, dried_left),
    })
}

impl Reading<'_> {
    fn harvest_rows(
        &self,
        rest: &str,
        params: impl rusqlite::Params,
    ) -> Result<Vec<HarvestRow>, Failure> {
        let mut statement = self.conn.prepare_cached(&format!("{ROW} {rest}"))?;
        let mut rows = statement.query(params)?;
        let mut harvests = Vec::new();
        while let Some(row) = rows.next()? {
            harvests.push(harvest_row(row)?);
        }
        Ok(harvests)
    }

    /// Harvests, the latest picking first.
    ///
    /// # Errors
    /// [`Failure::NotFound`] when `before` names no harvest; a failure to read.
    pub fn harvests(&self, filter: &HarvestFilter) -> Result<Page<HarvestRow>, Failure> {
        let mut rest = String::from("WHERE 1");
        let mut values: Vec<Value> = Vec::new();
        if let Some(herb) = &filter.herb {
            rest.push_str(" AND harvest.herb = ?");
            values.push(herb.as_str().to_owned().into());
        }
        if let Some(bed) = filter.bed {
            rest.push_str(" AND harvest.bed = ?");
            values.push(bed.to_string().into());
        }
        if let Some(before) = filter.before {
            if !super::is_present(self.conn, Noun::Harvest, &before.to_string())? {
                return Err(Failure::not_found(Noun::Harvest));
            }
            rest.push_str(
                " AND (harvest.picked_ms, harvest.id)
                    < (SELECT picked_ms, id FROM harvest WHERE id = ?)",
            );
            values.push(before.to_string().into());
        }
        rest.push_str(" ORDER BY harvest.picked_ms DESC, harvest.id DESC LIMIT ?");
        values.push((filter.limit as i64 + 1).into());
        Ok(Page::of(
            self.harvest_rows(&rest, params_from_iter(values))?,
            filter.limit,
        ))
    }

    /// The harvests picked between two moments, in order.
    ///
    /// # Errors
    /// A failure to read.
    pub fn harvests_picked(&self, from_ms: i64, to_ms: i64) -> Result<Vec<HarvestRow>, Failure> {
        self.harvest_rows(
            "WHERE harvest.picked_ms >= ?1 AND harvest.picked_ms < ?2
             ORDER BY harvest.picked_ms, harvest.id",
            [from_ms, to_ms],
        )
    }

    /// What was picked between two moments, summed up by herb, part and bed.
    ///
    /// # Errors
    /// A failure to read.
    pub fn yields(&self, from_ms: i64, to_ms: i64) -> Result<Vec<YieldSum>, Failure> {
        // Summed up here and not by SQLite, which would sort all of a year's rows by three texts.
        let mut statement = self.conn.prepare_cached(
            "SELECT harvest.id, herb, part, bed, fresh, photo, picked_ms, tray.dried, tray.fresh_g
             FROM harvest LEFT JOIN tray INDEXED BY tray_of_harvest
                 ON tray.harvest = harvest.id AND tray.dried > 0 AND NOT tray.cooked
             WHERE picked_ms >= ?1 AND picked_ms < ?2 ORDER BY picked_ms, harvest.id",
        )?;
        let mut rows = statement.query([from_ms, to_ms])?;
        let mut places: BTreeMap<(String, String, Option<String>), usize> = BTreeMap::new();
        let mut sums: Vec<YieldSum> = Vec::new();
        let (mut last, mut at) = (String::new(), 0);
        while let Some(row) = rows.next()? {
            // A harvest stands in a line for each of its trays.
            let id = row.get_ref(0)?.as_str().unwrap_or_default();
            if id != last {
                id.clone_into(&mut last);
                let key = (row.get(1)?, row.get(2)?, row.get(3)?);
                at = match places.entry(key) {
                    Entry::Occupied(known) => *known.get(),
                    Entry::Vacant(place) => {
                        sums.push(self.no_yield(place.key())?);
                        *place.insert(sums.len() - 1)
                    }
                };
                let sum = &mut sums[at];
                sum.fresh = sum.fresh + Amount::from_thousandths(row.get(4)?);
                sum.harvests += 1;
                if sum.photo.is_none() {
                    sum.photo = row.get(5)?;
                    sum.photo_ms = sum.photo.is_some().then(|| row.get(6)).transpose()?;
                }
            }
            if let Some(dried) = row.get(7)? {
                let sum = &mut sums[at];
                sum.dried = sum.dried + Amount::from_thousandths(dried);
                sum.fresh_of_dried_g += row.get::<_, f64>(8)?;
            }
        }
        Ok(places.into_values().map(|at| sums[at].clone()).collect())
    }

    fn no_yield(
        &self,
        (herb, part, bed): &(String, String, Option<String>),
    ) -> Result<YieldSum, Failure> {
        let bed = bed.as_deref().map(|bed| find(self.conn, bed));
        Ok(YieldSum {
            herb: herb.parse()?,
            part: part.clone(),
            bed: bed.transpose()?.flatten(),
            fresh: Amount::ZERO,
            dried: Amount::ZERO,
            fresh_of_dried_g: 0.0,
            harvests: 0,
            photo: None,
            photo_ms: None,
        })
    }

    /// A harvest as lists show it.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if there is none.
    pub fn harvest_row(&self, id: &HarvestId) -> Result<HarvestRow, Failure> {
        let rows = self.harvest_rows("WHERE harvest.id = ?1", [id.to_string()])?;
        let row = rows.into_iter().next();
        row.ok_or_else(|| Failure::not_found(Noun::Harvest))
    }

    /// A harvest with all that came of it.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if there is none.
    pub fn harvest(&self, id: &HarvestId) -> Result<HarvestPage, Failure> {
        Ok(HarvestPage {
            row: self.harvest_row(id)?,
            trays: self.trays_of(id)?,
            jars: self.jars_with(id)?,
        })
    }

    fn jars_with(&self, id: &HarvestId) -> Result<Vec<JarUse>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "WITH part (source_noun, source, cooked) AS (
                 SELECT 'harvest', ?1, 0
                 UNION ALL SELECT 'tray', id, cooked FROM tray WHERE harvest = ?1)
             SELECT jar.id, jar.body, draw.amount, draw.source_noun, part.cooked
             FROM part CROSS JOIN draw USING (source_noun, source)
             JOIN jar ON draw.owner_noun = 'jar' AND jar.id = draw.owner
             ORDER BY jar.poured_ms, jar.id, draw.position",
        )?;
        let mut rows = statement.query([id.to_string()])?;
        let mut uses = Vec::new();
        while let Some(row) = rows.next()? {
            let source: String = row.get(3)?;
            let is_fresh = source == Noun::Harvest.as_str();
            uses.push(JarUse {
                jar_id: row.get::<_, String>(0)?.parse()?,
                jar: parsed(&row.get::<_, String>(1)?)?,
                mass_g: Amount::from_thousandths(row.get(2)?).get(),
                state: if is_fresh {
                    PlantState::Fresh
                } else if row.get(4)? {
                    PlantState::Cooked
                } else {
                    PlantState::Dried
                },
            });
        }
        Ok(uses)
    }

    /// The days on which parts of herbs were picked, as they were where they were picked, in order; of one herb, or of all.
    ///
    /// # Errors
    /// A failure to read.
    pub fn picking_days(&self, herb: Option<&HerbKey>) -> Result<Vec<PickingDay>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT DISTINCT herb, part, substr(picked_at, 1, 10)
             FROM harvest INDEXED BY harvest_by_herb
             WHERE ?1 IS NULL OR herb = ?1 ORDER BY 1, 2, 3",
        )?;
        let mut rows = statement.query([herb.map(HerbKey::as_str)])?;
        let mut days = Vec::new();
        while let Some(row) = rows.next()? {
            let on: String = row.get(2)?;
            let on = on.parse();
            days.push(PickingDay {
                herb: row.get::<_, String>(0)?.parse()?,
                part: row.get(1)?,
                on: on.map_err(|_| Failure::Damaged("a day of picking cannot be read".into()))?,
            });
        }
        Ok(days)
    }

    /// Every herb that was ever picked, the latest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn herb_uses(&self) -> Result<Vec<HerbUse>, Failure> {
        // Steps from herb to herb along the index instead of reading every harvest.
        let mut statement = self.conn.prepare_cached(
            "WITH RECURSIVE picked (herb) AS (
                 SELECT min(herb) FROM harvest
                 UNION ALL
                 SELECT (SELECT min(herb) FROM harvest WHERE harvest.herb > picked.herb)
                 FROM picked WHERE picked.herb IS NOT NULL)
             SELECT harvest.body FROM picked JOIN harvest ON harvest.id = (
                 SELECT id FROM harvest AS last WHERE last.herb = picked.herb
                 ORDER BY last.picked_ms DESC, last.id DESC LIMIT 1)
             ORDER BY harvest.picked_ms DESC, harvest.id DESC",
        )?;
        let mut rows = statement.query([])?;
        let mut uses = Vec::new();
        while let Some(row) = rows.next()? {
            let harvest: Harvest = parsed(&row.get::<_, String>(0)?)?;
            uses.push(HerbUse {
                herb: harvest.herb,
                part: harvest.part,
                picked_at: harvest.picked_at,
            });
        }
        Ok(uses)
    }
}
