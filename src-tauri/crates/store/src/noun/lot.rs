//! Lots of plant that a jar can be filled from.

use journal::{Amount, Bed, Harvest, HarvestId, HerbKey, Lot, PlantState, Source, Tray, TrayId};
use rusqlite::Row;

use super::parsed;
use crate::{Failure, Reading, ledger};

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

/// Which lots.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct LotFilter {
    /// Only of this herb.
    pub herb: Option<HerbKey>,
    /// Only fresh or only dried.
    pub state: Option<PlantState>,
}

const FRESH: &str = "SELECT harvest.id, harvest.body, bed.body, lot.remains, NULL, NULL
    FROM lot JOIN harvest ON harvest.id = lot.id LEFT JOIN bed ON bed.id = harvest.bed
    WHERE lot.noun = 'harvest'";
const DRIED: &str = "SELECT harvest.id, harvest.body, bed.body, lot.remains, tray.id, tray.body
    FROM lot JOIN tray ON tray.id = lot.id JOIN harvest ON harvest.id = tray.harvest
    LEFT JOIN bed ON bed.id = harvest.bed
    WHERE lot.noun = 'tray'";
const IN_STOCK: &str = "AND lot.remains > 0 AND (?1 IS NULL OR harvest.herb = ?1)
    ORDER BY harvest.picked_ms DESC, lot.id";

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
    /// A failure to read.
    pub fn lots(&self, filter: &LotFilter) -> Result<Vec<LotRow>, Failure> {
        let herb = filter.herb.as_ref().map(HerbKey::as_str);
        let mut lots = Vec::new();
        for (state, select) in [(PlantState::Fresh, FRESH), (PlantState::Dried, DRIED)] {
            if filter.state.is_none_or(|wanted| wanted == state) {
                lots.extend(self.lot_rows(select, IN_STOCK, [herb])?);
            }
        }
        Ok(lots)
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
