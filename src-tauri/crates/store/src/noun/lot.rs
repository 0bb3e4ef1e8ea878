//! Lots of plant that a jar can be filled from.

use journal::{
    Amount, Bed, Harvest, HarvestId, HerbKey, Lot, Noun, PlantState, Source, Tray, TrayId,
};
use rusqlite::{Row, params};

use super::parsed;
use crate::{Failure, Page, Reading, ledger, log};

/// A lot of plant and where it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct LotRow {
    /// The lot.
    pub lot: Lot,
    /// What is left of it.
    pub left_g: f64,
    /// The harvest it comes from.
    pub harvest_id: HarvestId,
    /// What was picked.
    pub harvest: Harvest,
    /// The tray, if it is dried.
    pub tray: Option<Tray>,
    /// Where it was picked.
    pub bed: Option<Bed>,
}

impl LotRow {
    /// The state of the plant in it.
    pub fn state(&self) -> PlantState {
        self.tray
            .as_ref()
            .map_or(PlantState::Fresh, Tray::plant_state)
    }
}

/// Plant that is still fresh by the book, as narrow as a list of what is due needs it.
#[derive(Debug, Clone, PartialEq)]
pub struct FreshLeft {
    /// The harvest.
    pub id: HarvestId,
    /// Its code.
    pub code: String,
    /// What was picked.
    pub herb: HerbKey,
    /// When.
    pub picked_ms: i64,
    /// What is left of it.
    pub left: Amount,
}

/// A lot of which more was taken than there was, as two phones may do that did not know of each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Overdrawn {
    /// The lot.
    pub source: Source,
    /// What there was.
    pub came_in: Amount,
    /// What was taken.
    pub drawn: Amount,
}

/// Which lots.
#[derive(Debug, Clone, PartialEq)]
pub struct LotFilter {
    /// Only of this herb.
    pub herb: Option<HerbKey>,
    /// Only fresh, only dried or only cooked.
    pub state: Option<PlantState>,
    /// Only those after this one in the list.
    pub after: Option<Lot>,
    /// At most so many.
    pub limit: usize,
}

const FRESH: &str = "SELECT harvest.id, harvest.body, bed.body, lot.remains, NULL, NULL
    FROM lot JOIN harvest ON harvest.id = lot.id LEFT JOIN bed ON bed.id = harvest.bed
    WHERE lot.noun = 'harvest'";
const DRIED: &str = "SELECT harvest.id, harvest.body, bed.body, lot.remains, tray.id, tray.body
    FROM lot JOIN tray ON tray.id = lot.id JOIN harvest ON harvest.id = tray.harvest
    LEFT JOIN bed ON bed.id = harvest.bed
    WHERE lot.noun = 'tray'";
const IN_STOCK: &str = "SELECT id FROM lot INDEXED BY lot_in_stock
    WHERE noun = ?1 AND remains > 0 AND (?2 IS NULL OR herb = ?2)
      AND (?3 IS NULL OR (picked_ms, id) <
        (SELECT picked_ms, id FROM lot WHERE noun = ?1 AND id = ?3))
    ORDER BY picked_ms DESC, id DESC LIMIT ?4";

fn lot_row(row: &Row<'_>) -> Result<LotRow, Failure> {
    let harvest_id: HarvestId = row.get::<_, String>(0)?.parse()?;
    let tray = match row.get::<_, Option<String>>(4)? {
        Some(id) => Some((id.parse::<TrayId>()?, parsed(&row.get::<_, String>(5)?)?)),
        None => None,
    };
    Ok(LotRow {
        lot: tray
            .as_ref()
            .map_or(Lot::Harvest(harvest_id), |(id, _)| Lot::Tray(*id)),
        left_g: Amount::from_thousandths(row.get(3)?).get(),
        harvest_id,
        harvest: parsed(&row.get::<_, String>(1)?)?,
        tray: tray.map(|(_, tray)| tray),
        bed: row
            .get::<_, Option<String>>(2)?
            .map(|body| parsed(&body))
            .transpose()?,
    })
}

impl Reading<'_> {
    fn lot_rows(
        &self,
        select: &str,
        rest: &str,
        params: impl rusqlite::Params,
    ) -> Result<Vec<LotRow>, Failure> {
        let mut statement = self.conn.prepare_cached(&format!("{select} {rest}"))?;
        let mut rows = statement.query(params)?;
        let mut lots = Vec::new();
        while let Some(row) = rows.next()? {
            lots.push(lot_row(row)?);
        }
        Ok(lots)
    }

    /// Lots with something left, fresh before dried, the latest picking first.
    ///
    /// # Errors
    /// [`Failure::NotFound`] when `after` is not in this list; a failure to read.
    pub fn lots(&self, filter: &LotFilter) -> Result<Page<LotRow>, Failure> {
        let herb = filter.herb.as_ref().map(HerbKey::as_str);
        let mut after = filter.after.map(|lot| Source::from(lot).row());
        if let Some((noun, id)) = &after
            && !self.is_in_stock(*noun, id)?
        {
            return Err(Failure::not_found(*noun));
        }
        let mut lots = Vec::new();
        let kinds = [
            (PlantState::Fresh, Noun::Harvest, FRESH),
            (PlantState::Dried, Noun::Tray, DRIED),
        ];
        for (state, noun, select) in kinds {
            let is_behind = after.as_ref().is_some_and(|(after, _)| *after != noun);
            // A tray holds what was dried or what was cooked.
            let wanted = filter.state.map(|wanted| match wanted {
                PlantState::Cooked => PlantState::Dried,
                other => other,
            });
            if is_behind || wanted.is_some_and(|wanted| wanted != state) {
                continue;
            }
            let room = (filter.limit + 1).saturating_sub(lots.len());
            let last = after.take().map(|(_, id)| id);
            for id in self.in_stock(noun, herb, last.as_deref(), room)? {
                let rows = self.lot_rows(select, "AND lot.id = ?1", [id])?;
                let fits = |row: &LotRow| filter.state.is_none_or(|wanted| wanted == row.state());
                lots.extend(rows.into_iter().filter(fits));
            }
        }
        Ok(Page::of(lots, filter.limit))
    }

    /// The lots of plant with something left, the latest picking first, from behind `after`.
    pub(crate) fn in_stock(
        &self,
        noun: Noun,
        herb: Option<&str>,
        after: Option<&str>,
        limit: usize,
    ) -> Result<Vec<String>, Failure> {
        let mut statement = self.conn.prepare_cached(IN_STOCK)?;
        let ids = statement
            .query_map(params![noun.as_str(), herb, after, limit as i64], |row| {
                row.get(0)
            })?;
        Ok(ids.collect::<Result<_, _>>()?)
    }

    /// What was picked before a moment and is neither on the rack nor in a jar nor thrown away, the
    /// earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn fresh_left(&self, before_ms: i64) -> Result<Vec<FreshLeft>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT lot.id, harvest.code, lot.herb, lot.picked_ms, lot.remains
             FROM lot INDEXED BY lot_in_stock CROSS JOIN harvest ON harvest.id = lot.id
             WHERE lot.noun = 'harvest' AND lot.remains > 0 AND lot.picked_ms < ?1
             ORDER BY lot.picked_ms, lot.id",
        )?;
        let mut rows = statement.query([before_ms])?;
        let mut left = Vec::new();
        while let Some(row) = rows.next()? {
            left.push(FreshLeft {
                id: row.get::<_, String>(0)?.parse()?,
                code: row.get(1)?,
                herb: row.get::<_, String>(2)?.parse()?,
                picked_ms: row.get(3)?,
                left: Amount::from_thousandths(row.get(4)?),
            });
        }
        Ok(left)
    }

    /// The lots that stand below nothing and that nobody has settled: a bottle that is gone is.
    ///
    /// # Errors
    /// A failure to read.
    pub fn overdrawn(&self) -> Result<Vec<Overdrawn>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT noun, lot.id, came_in, remains FROM lot INDEXED BY lot_below_nothing
             WHERE remains < 0 AND NOT EXISTS
                 (SELECT 1 FROM bottle WHERE noun = 'bottle' AND bottle.id = lot.id AND ended)
             ORDER BY noun, lot.id",
        )?;
        let mut rows = statement.query([])?;
        let mut lots = Vec::new();
        while let Some(row) = rows.next()? {
            let noun = log::noun(&row.get::<_, String>(0)?)?;
            let Some(source) = Source::of(noun, &row.get::<_, String>(1)?) else {
                continue;
            };
            let came_in = Amount::from_thousandths(row.get(2)?);
            let left = Amount::from_thousandths(row.get(3)?);
            if left + source.allowance(came_in) < Amount::ZERO {
                lots.push(Overdrawn {
                    source,
                    came_in,
                    drawn: came_in - left,
                });
            }
        }
        Ok(lots)
    }

    /// What is left dried of each herb's part.
    ///
    /// # Errors
    /// A failure to read.
    pub fn dried_left(&self) -> Result<Vec<(HerbKey, String, Amount)>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT harvest.herb, harvest.part, sum(lot.remains)
             FROM lot INDEXED BY lot_in_stock CROSS JOIN tray ON tray.id = lot.id
             CROSS JOIN harvest ON harvest.id = tray.harvest
             WHERE lot.noun = 'tray' AND lot.remains > 0 AND NOT tray.cooked GROUP BY 1, 2",
        )?;
        let mut rows = statement.query([])?;
        let mut left = Vec::new();
        while let Some(row) = rows.next()? {
            left.push((
                row.get::<_, String>(0)?.parse()?,
                row.get(1)?,
                Amount::from_thousandths(row.get(2)?),
            ));
        }
        Ok(left)
    }

    /// Whether anything is left of a lot of plant.
    pub(crate) fn is_in_stock(&self, noun: Noun, id: &str) -> Result<bool, Failure> {
        Ok(self
            .conn
            .prepare_cached("SELECT 1 FROM lot WHERE noun = ?1 AND id = ?2 AND remains > 0")?
            .exists([noun.as_str(), id])?)
    }

    /// What is left, fresh and dried, of all plants picked between two moments.
    ///
    /// # Errors
    /// A failure to read.
    pub fn left_of_picked(&self, from_ms: i64, to_ms: i64) -> Result<(Amount, Amount), Failure> {
        let sum = |noun: Noun| -> Result<Amount, Failure> {
            let sum = self
                .conn
                .prepare_cached(
                    "SELECT coalesce(sum(remains), 0) FROM lot INDEXED BY lot_in_stock
                     WHERE noun = ?1 AND remains > 0 AND picked_ms >= ?2 AND picked_ms < ?3
                       AND NOT EXISTS (SELECT 1 FROM tray WHERE tray.id = lot.id AND tray.cooked)",
                )?
                .query_row(params![noun.as_str(), from_ms, to_ms], |row| row.get(0))?;
            Ok(Amount::from_thousandths(sum))
        };
        Ok((sum(Noun::Harvest)?, sum(Noun::Tray)?))
    }

    /// One lot, whether or not anything is left of it.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if there is none.
    pub fn lot(&self, lot: Lot) -> Result<LotRow, Failure> {
        let (noun, id) = Source::from(lot).row();
        let select = match lot {
            Lot::Harvest(_) => FRESH,
            Lot::Tray(_) => DRIED,
        };
        let rows = self.lot_rows(select, "AND lot.id = ?1", [id])?;
        rows.into_iter()
            .next()
            .ok_or_else(|| Failure::not_found(noun))
    }

    /// What is left of a lot or supply; nothing if there is none.
    ///
    /// # Errors
    /// A failure to read.
    pub fn left(&self, source: Source) -> Result<Amount, Failure> {
        Ok(ledger::noted(self.conn, source)?.map_or(Amount::ZERO, |holding| holding.left))
    }
}
